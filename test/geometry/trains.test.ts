import fc from 'fast-check';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { expect, it } from 'vitest';
import { gravityAt } from '../../src/geometry/trains/gravity.js';
import { eachSet } from '../../src/geometry/trains/sets.js';

it('every set of counts with its product in a range, none twice, smallest first', () => {
  const range = fc.tuple(fc.nat(20_000), fc.nat(20_000));
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 3 }),
      fc.integer({ min: 2, max: 20 }),
      fc.nat(10),
      range,
      (size, least, width, [low, wide]) => {
        const found: string[] = [];
        eachSet(size, [least, least + width], [low, low + wide], (counts) => found.push(counts.join()));
        const tried = new Set<string>();
        const counts = Array.from({ length: width + 1 }, (_, i) => least + i);
        const choose = (so: number[]): void => {
          if (so.length < size) for (const count of counts) choose([...so, count]);
          else if (
            inRange(
              so.reduce((a, b) => a * b),
              low,
              low + wide,
            )
          )
            tried.add([...so].sort((a, b) => a - b).join());
        };
        choose([]);
        expect([...found].sort()).toEqual([...tried].sort());
      },
    ),
  );
});

const inRange = (value: number, low: number, high: number): boolean => value >= low && value <= high;

it('gravity loses no figures to subtraction: the same in 40 figures', () => {
  const maths = create(all as FactoryFunctionMap, { number: 'BigNumber', precision: 40 });
  const exact = maths.evaluate(`
    a = 6378137; b = a*(1 - 1/298.257223563); GM = 3.986004418e14; w = 7.292115e-5;
    e = sqrt(a^2 - b^2)/b; m = w^2*a^2*b/GM;
    q = ((1 + 3/e^2)*atan(e) - 3/e)/2; p = 3*(1 + 1/e^2)*(1 - atan(e)/e) - 1;
    [GM/(a*b)*(1 - m - m*e*p/(6*q)), GM/a^2*(1 + m*e*p/(3*q))]`);
  const [equator, pole] = exact.entries[0].toArray().map(Number);
  expect(Math.abs(gravityAt(0) / equator - 1)).toBeLessThan(1e-13);
  expect(Math.abs(gravityAt(90) / pole - 1)).toBeLessThan(1e-13);
});
