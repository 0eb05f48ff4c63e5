import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { work } from '../../src/index.js';

const depth = (given: Record<string, unknown>) =>
  work('mesh.depth', { teeth: 60, leaves: 8, module: 0.8, ...given }).found;
const action = (given: Record<string, unknown>) =>
  work('mesh.action', { teeth: 60, leaves: 8, module: 0.8, ...given }).found;

describe('mesh.depth', () => {
  it('says by how much the class pair is too shallow or too deep, at module 0.8', () => {
    expect(depth({ measuredCentres: 27.34 })).toMatchObject({
      verdict: 'too shallow',
      gap: expect.closeTo(0.14, 9),
    });
    expect(depth({ measuredCentres: 27.06 })).toMatchObject({
      verdict: 'too deep',
      gap: expect.closeTo(-0.14, 9),
    });
    // The edges of what is right are right, on either side.
    for (const edge of [27.16, 27.2, 27.24]) expect(depth({ measuredCentres: edge }).verdict).toBe('right');
  });

  it('the shake grows as the centres open, and is gone where the teeth bind', () => {
    const shakes = Array.from(
      { length: 20 },
      (_, i) => depth({ measuredCentres: 26.9 + 0.08 * i }).shake as number,
    );
    expect(shakes[0]).toBe(0);
    for (let i = 1; i < shakes.length; i++) expect(shakes[i]).toBeGreaterThan(shakes[i - 1] as number);
  });

  it('at the right centres it is pitch less tooth less leaf, for every pair', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 0, max: 300 }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (leaves, more, module) => {
          const teeth = Math.max(6, leaves + more);
          const found = depth({ teeth, leaves, module, measuredCentres: (module * (teeth + leaves)) / 2 });
          // An ogive fuller than the true curve may take a little of it before the line of centres.
          expect(found.shake as number).toBeLessThanOrEqual((found.shakeAtRightCentres as number) + 1e-9);
          expect(found.shake as number).toBeGreaterThan(0.9 * (found.shakeAtRightCentres as number));
          expect(found.verdict).toBe('right');
        },
      ),
      { numRuns: 60 },
    );
  });

  it('says in words how the shake feels', () => {
    expect(depth({ measuredCentres: 26.4 })).toMatchObject({ feel: 'none: it binds', shake: 0 });
    expect(depth({ measuredCentres: 26.4 }).reason).toMatch(/strike the bottom/);
    expect(depth({ measuredCentres: 27 }).feel).toBe('scarcely any');
    expect(depth({ measuredCentres: 27.2 }).feel).toBe('as it should be');
    expect(depth({ measuredCentres: 28 }).feel).toBe('a lot');
    const apart = depth({ measuredCentres: 29 });
    expect(apart).toMatchObject({ feel: 'out of mesh', verdict: 'too shallow' });
    expect(apart.shake).toBeUndefined();
  });

  it('refuses centres that no such pair could have', () => {
    expect(() => depth({ measuredCentres: 20 })).toThrow(/24\.8 to 29\.6 mm/);
    expect(() => depth({ measuredCentres: 54.4 })).toThrow(/24\.8 to 29\.6 mm/);
    expect(() => depth({ leaves: 61, measuredCentres: 48 })).toThrow(/at most as many/);
  });
});

describe('mesh.action', () => {
  const error = (given: Record<string, unknown>) => action(given).largestRatioErrorPercent as number;

  it('the further from the right centres, the worse the ratio, on either side', () => {
    const shallow = Array.from({ length: 9 }, (_, i) => error({ centreDistance: 27.2 + 0.12 * i }));
    const deep = Array.from({ length: 6 }, (_, i) => error({ centreDistance: 27.2 - 0.04 * i }));
    for (const errors of [shallow, deep])
      for (let i = 1; i < errors.length; i++) expect(errors[i]).toBeGreaterThan(errors[i - 1] as number);
  });

  it('the full addendum is truer than the practical one, and more leaves are truer than fewer', () => {
    expect(error({ addendum: 'theoretical' })).toBeLessThan(error({}));
    expect(error({ teeth: 90, leaves: 12 })).toBeLessThan(error({}));
    expect(error({})).toBeLessThan(error({ teeth: 45, leaves: 6 }));
  });

  it('after the line of centres the ratio of the class pair is true to a millionth of a per cent', () => {
    const curve = action({}).ratioCurve as { angle: number; ratio: number }[];
    expect(curve).toHaveLength(48);
    const after = curve.filter(({ angle }) => angle > 0 && angle < 4.5);
    expect(after.length).toBeGreaterThan(30);
    for (const { ratio } of after) expect(Math.abs(ratio / 7.5 - 1)).toBeLessThan(1e-8);
    expect(curve.some(({ angle, ratio }) => angle < 0 && Math.abs(ratio / 7.5 - 1) > 0.005)).toBe(true);
  });

  it('approach and recess make up a pitch of the wheel, and more where two teeth share', () => {
    const { approachAngle, recessAngle } = action({}) as Record<string, number>;
    expect((approachAngle as number) + (recessAngle as number)).toBeCloseTo(6, 4);
    // What the practical tooth lacks of a pitch after the line of centres it makes up before it.
    expect(approachAngle).toBeGreaterThan(0.8);
    const twelve = action({ teeth: 90, leaves: 12 }) as Record<string, number>;
    expect((twelve.approachAngle as number) + (twelve.recessAngle as number)).toBeGreaterThan(4.1);
    // Too deep: all after the line. Too shallow: more before it.
    expect(action({ centreDistance: 27 }).approachAngle).toBe(0);
    expect(action({ centreDistance: 27.4 }).approachAngle).toBeGreaterThan(approachAngle as number);
  });

  it('does not mind the size: angles and ratios are the same at any module', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        fc.double({ min: -0.2, max: 1, noNaN: true }),
        (module, gap) => {
          const [one, other] = [0.8, module].map((m) =>
            action({ module: m, centreDistance: m * (34 + gap) }),
          );
          expect(other?.recessAngle).toBeCloseTo(one?.recessAngle as number, 5);
          expect(other?.largestRatioErrorPercent).toBeCloseTo(one?.largestRatioErrorPercent as number, 3);
        },
      ),
      { numRuns: 20 },
    );
  });

  it('says why a pair does not mesh', () => {
    expect(action({ centreDistance: 26.5 })).toMatchObject({
      possible: false,
      reason: expect.stringMatching(/bottom/),
    });
    expect(action({ centreDistance: 26.9 })).toMatchObject({
      possible: false,
      reason: expect.stringMatching(/bind/),
    });
    expect(action({ centreDistance: 29.2 })).toMatchObject({
      possible: false,
      reason: expect.stringMatching(/reach/),
    });
    expect(action({ centreDistance: 29.2 }).ratioCurve).toBeUndefined();
    // A pinion of five far out of depth: its leaves are small and wide apart.
    expect(action({ teeth: 7, leaves: 5, module: 1, centreDistance: 6.85 })).toMatchObject({
      possible: false,
      reason: expect.stringMatching(/slip over the tips/),
    });
  });

  it('both routes agree over the whole door', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 100 }),
        fc.integer({ min: 0, max: 900 }),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        fc.oneof(fc.constant(0), fc.double({ min: -1, max: 2.99, noNaN: true })),
        fc.constantFrom('practical', 'theoretical'),
        (leaves, more, module, gap, addendum) => {
          const teeth = Math.max(6, leaves + more);
          const centreDistance = module * ((teeth + leaves) / 2 + gap);
          const { checks } = work('mesh.action', { teeth, leaves, module, centreDistance, addendum });
          expect(checks.every(({ agrees }) => agrees)).toBe(true);
        },
      ),
      { numRuns: 100 },
    );
  });
});
