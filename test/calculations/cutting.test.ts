import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError, work } from '../../src/index.js';

const share = (most: number, least = -most) => fc.double({ min: least, max: most, noNaN: true });

/** Wheels with any of the things that can be wrong, each within what is accepted or a little past it. */
const wheels = fc
  .record({
    teeth: fc.integer({ min: 6, max: 120 }),
    leaves: fc.integer({ min: 5, max: 20 }),
    module: fc.double({ min: 0.05, max: 20, noNaN: true }),
    depthForm: fc.constantFrom('2.95', '3.38', '2.45'),
    wrong: fc.nat(255),
    steps: share(1.25, 0.1),
    stepError: share(0.41),
    slip: share(1),
    at: share(1, 0),
    slipPutBack: fc.constantFrom('yes', 'no'),
    small: fc.boolean(),
    depthError: share(0.51),
    offset: share(0.51),
    eccentricity: share(1, 0),
    cutterModule: share(1.21, 0.79),
    blank: share(3.2, 2),
  })
  .map((w) => {
    const is = (bit: number) => ((w.wrong >> bit) & 1) === 1;
    const teeth = Math.max(w.teeth, w.leaves);
    const steps = is(0) ? Math.max(4, Math.round(teeth * w.steps)) : teeth;
    const pitch = 1_296_000 / teeth;
    return {
      ...{ teeth, leaves: w.leaves, module: w.module, depthForm: w.depthForm },
      ...(is(0) && { steps }),
      ...(is(1) && { stepErrorArcSeconds: (w.stepError * pitch) / (w.small ? teeth : 1) }),
      ...(is(2) && {
        slipAt: 1 + Math.floor(w.at * (steps - 1.001)),
        slipArcSeconds: w.slip * pitch * (w.small ? 0.1 : 1),
        slipPutBack: w.slipPutBack,
      }),
      ...(is(3) && { depthError: w.depthError * w.module }),
      ...(is(4) && { offset: w.offset * w.module }),
      ...(is(5) && { eccentricity: w.eccentricity * w.module }),
      ...(is(6) && { cutterModule: w.cutterModule * w.module }),
      ...(is(7) && { blankDiameter: w.module * (teeth + w.blank) }),
    };
  });

describe('cut.simulate', () => {
  it('cut in metal and reckoned on the circle, any wheel measures the same', () => {
    let answered = 0;
    fc.assert(
      fc.property(wheels, (given) => {
        try {
          const { found } = work('cut.simulate', given);
          answered++;
          expect((found.toothThicknesses as number[]).at(-1)).toBe(found.lastTooth);
          expect((found.outline as string).length).toBeLessThan(700 * given.teeth);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          expect(error.message).toMatch(/^\w+: .{1,80} is not accepted; give [^\n]{3,160}$/);
        }
      }),
      { numRuns: 300 },
    );
    expect(answered).toBeGreaterThan(100);
  });

  // Found by chance: two spaces run into one, and a middle tooth that no plain move leaves.
  it.each([
    { teeth: 6, slipArcSeconds: -106335.60957475302, cutterModule: 0.04474114702560622 },
    { teeth: 7, slipArcSeconds: -183696.42857142867, blankDiameter: 0.45804164717949525 },
  ])('four cuts, the second put nearly on the first: %o', (given) => {
    const slip = { steps: 4, slipAt: 1, slipPutBack: 'yes' };
    const { found } = work('cut.simulate', { leaves: 5, module: 0.05, ...slip, ...given });
    expect(found.spaceWidth).toBeLessThan(0.0803);
    expect(found.verdict).not.toContain('spaces are wide');
  });

  it('leaves a slip of more than a move open: its space stands before the first', () =>
    expect(
      work('cut.simulate', {
        ...{ teeth: 7, leaves: 5, module: 0.05, slipAt: 1, slipPutBack: 'yes' },
        ...{ stepErrorArcSeconds: -1446.4285714289208, slipArcSeconds: -185142.85714285675 },
      }).found.verdict,
    ).toContain('uneven'));

  it('proves its verdict: no more than a tenth of its words are left open', () => {
    let [open, all] = [0, 0];
    for (const given of [
      { stepErrorArcSeconds: -30 },
      { slipAt: 7, slipArcSeconds: 900 },
      { offset: 0.2, depthError: 0.1 },
      { eccentricity: 0.1 },
      { steps: 58 },
    ]) {
      const { checks } = work('cut.simulate', { teeth: 60, leaves: 8, module: 0.8, ...given });
      const words = Object.values(checks.find(({ of }) => of === 'verdict')?.value as Record<string, number>);
      open += words.filter((one) => one === 0.5).length;
      all += words.length;
    }
    expect(open).toBeLessThan(all / 10);
  });

  it.each<[string, Record<string, unknown>, RegExp]>([
    ['a pinion larger than the wheel', { leaves: 70 }, /^leaves: 70 .* at most as many/],
    ['a move half a pitch out', { stepErrorArcSeconds: 10_800 }, /^stepErrorArcSeconds/],
    ['two turns of cuts', { steps: 120 }, /^steps: 120 .* 76 cuts$/],
    ['a slip with no place', { slipArcSeconds: 60 }, /^slipAt/],
    ['a place with no slip', { slipAt: 3 }, /^slipArcSeconds/],
    ['a slip after the last move', { slipAt: 60, slipArcSeconds: 60 }, /^slipAt: 60 .* 59 moves/],
    ['nothing to put back', { slipPutBack: 'yes' }, /^slipPutBack/],
    ['a cutter half a tooth off', { offset: 0.5 }, /^offset/],
    ['a cutter of twice the module', { cutterModule: 1.6 }, /^cutterModule/],
    ['a blank of another wheel', { blankDiameter: 80 }, /^blankDiameter/],
    ['a blank that misses the pitch circle', { eccentricity: 2 }, /^eccentricity/],
    [
      'a wide cutter and short moves',
      { cutterModule: 0.96, stepErrorArcSeconds: -8_600 },
      /^stepErrorArcSeconds/,
    ],
    [
      'four cuts, two of them in one',
      { steps: 4, slipAt: 2, slipArcSeconds: -21_000, cutterModule: 0.96 },
      /./,
    ],
  ])('refuses %s', (name, given, message) => {
    const cut = () => work('cut.simulate', { teeth: 60, leaves: 8, module: 0.8, ...given });
    if (name.startsWith('four')) expect(cut().found.teethStanding).toBeGreaterThan(1);
    else expect(cut).toThrow(message);
  });

  it('takes a tooth gone for nought, and counts those that stand', () => {
    const { found } = work('cut.simulate', {
      teeth: 60,
      leaves: 8,
      module: 0.8,
      steps: 56,
      stepErrorArcSeconds: 1800,
    });
    expect(found.lastTooth).toBe(0);
    expect(found.teethStanding).toBe(55);
  });
});

describe('cutter.form', () => {
  it('answers for every wheel and corner it accepts, in 200 points or fewer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 1000 }),
        fc.integer({ min: 5, max: 100 }),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        fc.constantFrom('2.95', '3.38', '2.45'),
        share(1, 0),
        (count, leaves, module, depthForm, part) => {
          const given = { teeth: Math.max(count, leaves), leaves, module, depthForm };
          const largest = work('cutter.form', given).found.largestTipRadius as number;
          const { found } = work('cutter.form', { ...given, tipRadius: Math.min(40, part * largest) });
          expect((found.points as unknown[]).length).toBeLessThanOrEqual(200);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('is wider at the rim for fewer leaves, and has no room for a tip beyond its full round', () => {
    const width = (leaves: number) =>
      work('cutter.form', { teeth: 60, leaves, module: 0.8 }).found.width as number;
    for (let leaves = 6; leaves < 20; leaves++) expect(width(leaves)).toBeGreaterThan(0);
    const { largestTipRadius } = work('cutter.form', { teeth: 60, leaves: 8, module: 0.8 }).found;
    expect(() =>
      work('cutter.form', {
        teeth: 60,
        leaves: 8,
        module: 0.8,
        tipRadius: (largestTipRadius as number) + 0.001,
      }),
    ).toThrow(InputError);
  });
});
