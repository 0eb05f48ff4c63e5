import fc from 'fast-check';
import { expect, it } from 'vitest';
import { InputError, work } from '../../src/index.js';

const found = (name: string, given: Record<string, unknown>, key: string) =>
  work(name, given).found[key] as number;

const wheels = fc.record({
  teeth: fc.integer({ min: 12, max: 300 }),
  module: fc.double({ min: 0.1, max: 10, noNaN: true }),
  pressureAngle: fc.constantFrom(14.5, 20, 25),
});

const serves = (given: Record<string, unknown>): boolean => {
  try {
    work('involute.span', given);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
};

it('two spans over neighbouring counts tell the module: their difference is the base pitch', () => {
  fc.assert(
    fc.property(wheels, ({ teeth, module, pressureAngle }) => {
      const given = { teeth: teeth + 20, module, pressureAngle };
      const usual = found('involute.span', given, 'spanTeeth');
      // The anvils always reach over one tooth more than usual, or else over one fewer.
      const fewer = serves({ ...given, spanTeeth: usual + 1 }) ? usual : usual - 1;
      const difference =
        found('involute.span', { ...given, spanTeeth: fewer + 1 }, 'span') -
        found('involute.span', { ...given, spanTeeth: fewer }, 'span');
      expect(difference / Math.PI / Math.cos((pressureAngle * Math.PI) / 180)).toBeCloseTo(module, 8);
    }),
  );
});

it('one more tooth is one more module of blank; twice the module is twice every size', () => {
  fc.assert(
    fc.property(wheels, (given) => {
      const more = { ...given, teeth: given.teeth + 1 };
      const key = 'outsideDiameter';
      expect(found('involute.wheel', more, key) - found('involute.wheel', given, key)).toBeCloseTo(
        given.module,
        8,
      );
      const twice = { ...given, module: 2 * given.module };
      for (const [name, value] of [
        ['involute.wheel', 'rootDiameter'],
        ['involute.span', 'span'],
        ['involute.overPins', 'measurement'],
        ['tooth.chordal', 'chordalAddendum'],
      ] as const) {
        const { pressureAngle, ...rest } = twice;
        const asked = name === 'tooth.chordal' ? rest : { ...rest, pressureAngle };
        const half = { ...asked, module: given.module };
        expect(found(name, asked, value)).toBeCloseTo(2 * found(name, half, value), 7);
      }
    }),
  );
});

it('an odd count reads less over pins than the even counts beside it promise', () => {
  for (let teeth = 7; teeth <= 201; teeth += 2) {
    const over = (count: number) => found('involute.overPins', { teeth: count, module: 1 }, 'measurement');
    expect(over(teeth)).toBeLessThan((over(teeth - 1) + over(teeth + 1)) / 2);
    expect(over(teeth)).toBeGreaterThan(over(teeth - 1));
  }
});

it('refuses pins and spans that touch no flank, and says what serves', () => {
  expect(() => work('involute.overPins', { teeth: 39, module: 1, pinDiameter: 5 })).toThrow(
    /^pinDiameter: 5 is not accepted; give 1\.6132 to 2\.9412 mm for this wheel/,
  );
  expect(() => work('involute.span', { teeth: 40, module: 1, spanTeeth: 12 })).toThrow(
    /^spanTeeth: 12 is not accepted; give 3 to 6 teeth for this wheel/,
  );
  // The usual pin lies below the tips of five teeth; a pin thicker than a pitch is no advice.
  expect(() => work('involute.overPins', { teeth: 5, module: 1 })).toThrow(
    /^pinDiameter is missing; give it from [12]\.\d{4} to 3\.1415 mm: the usual pin of 1\.728 mm does not serve/,
  );
  for (const pinDiameter of [1.6132, 2.9412])
    work('involute.overPins', { teeth: 39, module: 1, pinDiameter });
  for (const spanTeeth of [3, 6]) work('involute.span', { teeth: 40, module: 1, spanTeeth });
});

it('every range and angle: the routes agree to the ends', () => {
  for (const pressureAngle of [10, 14.5, 20, 22.5, 25, 30])
    for (const teeth of [5, 6, 11, 17, 18, 99, 1000])
      for (const module of [0.05, 20])
        for (const name of ['involute.wheel', 'involute.span', 'involute.overPins']) {
          const pin = name === 'involute.overPins' ? { pinDiameter: 2.5 * module } : {};
          const usual = { teeth, module, pressureAngle };
          if (name === 'involute.overPins' && teeth > 17) work(name, usual);
          else work(name, { ...usual, ...pin });
        }
  for (let angle = 0; angle <= 80; angle += 0.5) work('involute.function', { angle });
  for (let angle = 5; angle <= 45; angle += 0.5)
    for (const addendumFactor of [0.1, 0.8, 1, 2])
      work('involute.undercut', { pressureAngle: angle, addendumFactor });
});

it('the cutters follow one on another from 12 teeth to the rack, in both series, and each names the other', () => {
  for (const series of ['diametralPitch', 'module'] as const) {
    const numbers: number[] = [];
    let teeth: number | null = 12;
    while (teeth !== null) {
      const { found: row, working } = work('involute.cutterNumber', { teeth, series });
      expect(row.from).toBe(teeth);
      expect(working.join(' ')).toContain(`No. ${9 - (row.number as number)}.`);
      numbers.push(row.number as number);
      teeth = row.to === null ? null : (row.to as number) + 1;
    }
    const up = [1, 2, 3, 4, 5, 6, 7, 8];
    expect(numbers).toEqual(series === 'module' ? up : up.toReversed());
  }
  expect(work('involute.cutterNumber', { teeth: 14 }).working[0]).toBe(
    '14 lies in 14 to 16: No. 7 in the diametral-pitch series; in the module series that is No. 2.',
  );
});

it('says why a wheel of the basic rack is undercut at more teeth than the rule at 30°', () => {
  expect(work('involute.undercut', { pressureAngle: 30 }).found.leastTeeth).toBe(8);
  const words = (given: Record<string, unknown>) => work('involute.wheel', given).working.join(' ');
  expect(words({ teeth: 9, module: 1, pressureAngle: 30 })).toMatch(/Fewer than 10 teeth.* 8 would do/);
  expect(words({ teeth: 9, module: 1 })).toMatch(/Fewer than 18 teeth[^.]*\(undercut\)\.$/);
  expect(words({ teeth: 60, module: 0.8 })).toContain('2.4 modules deep');
});
