import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { workInFull } from '../../src/calculations/work.js';
import { evaluateFormula } from '../../src/formula/formula.js';
import { InputError, work } from '../../src/index.js';

/** Numbers spread evenly over a range, which those of fc.double are not: half of them lie near nought. */
const real = (least: number, most: number) =>
  fc.integer({ min: 0, max: 1e9 }).map((share) => least + ((most - least) * share) / 1e9);

const refusal = (name: string, given: Record<string, unknown>): string => {
  try {
    work(name, given);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return 'answered';
};

describe('triangle.solve', () => {
  it.each([
    [{ a: 3, b: 4 }, /^c is missing; give three of a, b, c, A, B and C, a side among them$/],
    [{ A: 30, B: 60, C: 90 }, /^C: 90 is not accepted; give a side in its place/],
    [{ a: 3, b: 4, c: 5, A: 30 }, /^A: 30 is not accepted; give three of/],
    [{ a: 100, b: 100, c: 0.001 }, /sliver$/],
    [{ a: 5, b: 5, c: 9.999999998 }, /sliver$/],
    [{ a: 5, A: 90, B: 89.995 }, /sliver$/],
  ])('refuses %j', (given, message) => expect(refusal('triangle.solve', given)).toMatch(message));

  it.each([
    [{ a: 3, b: 4, c: 7 }, /do not reach past the longest/],
    [{ a: 3, b: 4, c: 8 }, /do not reach past the longest/],
    [{ a: 5, A: 90, B: 90 }, /leave nothing for the third/],
    [{ a: 4, b: 10, A: 30 }, /^side a is too short to reach the line that angle A gives$/],
    [{ b: 4, c: 10, B: 30 }, /^side b is too short to reach the line that angle B gives$/],
    [{ a: 9, b: 10, A: 100 }, /must be longer than side b$/],
  ])('%j is not possible, and why', (given, reason) => {
    const { found, working } = work('triangle.solve', given);
    expect(found).toMatchObject({ possible: false, a: null, C: null, area: null, second: null });
    expect(found.reason).toMatch(reason);
    expect(working).toHaveLength(1);
  });

  it('gives the second triangle where there is one', () => {
    const { found } = work('triangle.solve', { a: 6, b: 10, A: 30 });
    expect(found.B).toBeCloseTo(56.4427, 4);
    expect(found.second).toMatchObject({ a: 6, b: 10, A: 30 });
    expect((found.second as { B: number }).B).toBeCloseTo(123.5573, 4);
    expect(work('triangle.solve', { a: 12, b: 10, A: 30 }).found.second).toBeNull();
  });

  it('keeps what was given as it was given, and 3, 4, 5 has a right angle', () => {
    const { found } = work('triangle.solve', { a: 3, b: 4, c: 5 });
    expect(found).toMatchObject({ a: 3, b: 4, c: 5 });
    expect(found.C).toBeCloseTo(90, 12);
    expect(found.area).toBeCloseTo(6, 12);
  });

  it('leaves out a slip that would come right: Pythagoras on a right angle', () => {
    const slips = (C: number) => Object.keys(workInFull('triangle.solve', { a: 3, b: 4, C }).slips);
    expect(slips(70)).toContain('pythagoras');
    expect(slips(90)).not.toContain('pythagoras');
  });

  // The whole range of the door, with flats, slivers and sides that only just reach.
  it('both routes agree on 20,000 random triangles, or it is refused, or not possible', () => {
    const part = (least: number, most: number) =>
      fc.oneof(
        real(least, most),
        real(Math.log(least), Math.log(most)).map(Math.exp),
        fc.integer({ min: 1, max: Math.min(most, 170) }),
      );
    const [side, angle] = [part(0.001, 10_000), part(0.01, 179.98)];
    const nudge = real(-14, -1).map((power) => 10 ** power);
    const given = fc.oneof(
      fc
        .tuple(
          fc.shuffledSubarray(['a', 'b', 'c', 'A', 'B', 'C'], { minLength: 3, maxLength: 3 }),
          side,
          side,
          side,
          angle,
          angle,
          angle,
        )
        .map(([keys, a, b, c, A, B, C]) => {
          const all: Record<string, number> = { a, b, c, A, B, C };
          return Object.fromEntries(keys.map((key) => [key, all[key]]));
        }),
      // Very nearly flat, and very nearly touching.
      fc.tuple(side, side, nudge, fc.boolean()).map(([a, b, e, more]) => ({
        a,
        b,
        c: (a + b) * (more ? 1 + e : 1 - e),
      })),
      fc.tuple(side, angle, nudge, fc.boolean()).map(([b, A, e, more]) => ({
        b,
        A,
        a: b * Math.sin((A * Math.PI) / 180) * (more ? 1 + e : 1 - e),
      })),
    );
    const tally = { answered: 0, none: 0, two: 0, refused: 0 };
    fc.assert(
      fc.property(given, (parts) => {
        let found: Readonly<Record<string, unknown>>;
        try {
          ({ found } = work('triangle.solve', parts));
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          tally.refused++;
          return;
        }
        tally[found.possible ? (found.second ? 'two' : 'answered') : 'none']++;
        for (const key of ['a', 'b', 'c', 'A', 'B', 'C', 'area'])
          expect(found.possible ? Number.isFinite(found[key]) : found[key] === null, key).toBe(true);
      }),
      { numRuns: 20_000 },
    );
    for (const count of Object.values(tally)) expect(count).toBeGreaterThan(500);
  });
});

describe('a side that just reaches, or is a hair out', () => {
  const A = 0.06348743468425676;
  const reach = Math.sin((A * Math.PI) / 180);
  it.each([1e-12, -1e-12, 3e-12, -3e-13])('is refused at %s of its length', (share) =>
    expect(() => work('triangle.solve', { b: 1, A, a: reach * (1 + share) })).toThrow(/^A: .* just reaching/),
  );
  it('is one triangle, two or none on either side', () => {
    const found = (share: number) => work('triangle.solve', { b: 1, A, a: reach * (1 + share) }).found;
    expect(found(0)).toMatchObject({ possible: true, B: 90, second: null });
    expect(found(1e-10).second).not.toBeNull();
    expect(found(-1e-10).possible).toBe(false);
  });
});

describe('expansion.length', () => {
  it('says whose figure a metal’s is', () => {
    const words = (coefficient: unknown) =>
      work('expansion.length', { length: 994, temperatureChange: 10, coefficient }).working.join(' ');
    expect(words('invar')).toContain('1.2 millionths for each °C is the figure for invar: Common practice');
    expect(words('invar')).toContain('from memory');
    expect(words(13.7)).not.toContain('figure for');
  });
});

describe('circle.chord', () => {
  it('takes divisions or an angle, never both', () => {
    expect(refusal('circle.chord', { diameter: 10 })).toMatch(/^divisions is missing; give either/);
    expect(refusal('circle.chord', { diameter: 10, divisions: 4, angle: 90 })).toMatch(/not both$/);
    const byAngle = work('circle.chord', { diameter: 10, angle: 72 }).found;
    expect(byAngle).toEqual(work('circle.chord', { diameter: 10, divisions: 5 }).found);
  });

  it('leaves out the sine of the whole angle for three divisions, where it comes right', () => {
    const slips = (divisions: number) =>
      Object.keys(workInFull('circle.chord', { diameter: 10, divisions }).slips);
    expect(slips(5)).toContain('wholeAngle');
    expect(slips(3)).not.toContain('wholeAngle');
  });
});

describe('wrong ways that people go, with the figures they get', () => {
  const slip = (name: string, given: Record<string, unknown>, id: string): string | undefined =>
    workInFull(name, given).slips[id]?.formula;

  it.each([
    ['holes.circle', { holes: 5, diameter: 50 }, 'radians', 'D*sin(A/2)', -49.6],
    ['holes.circle', { holes: 5, diameter: 50 }, 'arc', 'pi*D*A/360', 31.4],
    ['holes.circle', { holes: 5, diameter: 50 }, 'wholeAngle', 'D*sind(A)', 47.6],
    ['holes.circle', { holes: 5, diameter: 50 }, 'asRadius', '2*D*sind(A/2)', 58.8],
    [
      'taper.angles',
      { largeDiameter: 6.5, smallDiameter: 3.5, length: 27 },
      'fullDifference',
      'atand((D - d)/l)',
      6.34,
    ],
    ['taper.angles', { largeDiameter: 6.5, smallDiameter: 3.5, length: 27 }, 'included', '2*a', 6.36],
    [
      'taper.setOver',
      { largeDiameter: 25, smallDiameter: 20, taperLength: 60, workLength: 90 },
      'noLength',
      '(D - d)/2',
      2.5,
    ],
    [
      'taper.setOver',
      { largeDiameter: 25, smallDiameter: 20, taperLength: 60, workLength: 90 },
      'inverted',
      '(D - d)/2*l/L',
      1.667,
    ],
    ['polygon.flats', { diameter: 10, sides: 6 }, 'divided', 'D/cosd(180/N)', 11.547],
  ] as const)('%s %j: %s', (name, given, id, formula, gives) => {
    expect(slip(name, given, id)).toBe(formula);
    const { symbols } = workInFull(name, given);
    expect(evaluateFormula(formula, symbols)).toBeCloseTo(gives, gives === 11.547 || gives === 1.667 ? 3 : 1);
  });
});

describe('dovetail.overRollers', () => {
  const good = { width: 20, angle: 60, depth: 4, rollerDiameter: 4, kind: 'female' };
  it.each([
    [{ rollerDiameter: 6 }, /^rollerDiameter: 6 .*touch the slope below its edge$/],
    [{ width: 1, depth: 50, rollerDiameter: 22 }, /^rollerDiameter: 22 .*side by side in the groove$/],
    [{ kind: 'male', depth: 30 }, /^depth: 30 .*do not run into one another$/],
  ])('refuses %j', (given, message) =>
    expect(refusal('dovetail.overRollers', { ...good, ...given })).toMatch(message),
  );
});

it('taper.setOver and taper.angles refuse what is no taper, and work shorter than its taper', () => {
  const taper = { largeDiameter: 20, smallDiameter: 20, length: 50 };
  expect(refusal('taper.angles', taper)).toMatch(/^smallDiameter: 20 .*less than the large diameter, 20 mm$/);
  const over = { largeDiameter: 20, smallDiameter: 18, taperLength: 50, workLength: 40 };
  expect(refusal('taper.setOver', over)).toMatch(/^workLength: 40 .*at least the length of the taper/);
});

it('polygon.flats says that odd sides have a corner opposite', () => {
  expect(work('polygon.flats', { diameter: 10, sides: 5 }).working.join()).toContain('corner lies opposite');
  expect(work('polygon.flats', { diameter: 10, sides: 6 }).working.join()).not.toContain('corner');
});

it('expansion.length takes a metal by name, and shortens in the cold', () => {
  const bar = { length: 1000, temperatureChange: -10 };
  expect(work('expansion.length', { ...bar, coefficient: 'steel' }).found).toEqual(
    work('expansion.length', { ...bar, coefficient: 11.3 }).found,
  );
  expect(work('expansion.length', { ...bar, coefficient: 'brass' }).found.change).toBeCloseTo(-0.204, 9);
  expect(refusal('expansion.length', { ...bar, coefficient: 'bras' })).toMatch(/or one of brass, /);
});
