import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { cornersOf, measured, type Triangle, trianglesOf } from '../../src/geometry/trigonometry/triangle.js';
import { caseOf, type Parts } from '../../src/geometry/trigonometry/triangle-case.js';
import { triangleByRules } from '../../src/handbook/trigonometry/triangle.js';

/** Numbers spread evenly over a range, which those of fc.double are not: half of them lie near nought. */
const real = (least: number, most: number) =>
  fc.integer({ min: 0, max: 1e9 }).map((share) => least + ((most - least) * share) / 1e9);

const SIX = ['a', 'b', 'c', 'A', 'B', 'C'] as const;
type Part = (typeof SIX)[number];

/** Every choice of three parts but the three angles. */
const choices: Part[][] = SIX.flatMap((one, i) =>
  SIX.slice(i + 1).flatMap((two, j) => SIX.slice(i + j + 2).map((three) => [one, two, three])),
).filter((parts) => parts.join('') !== 'ABC');

/** Triangles with no angle under two degrees, of any size. */
const triangles = fc.tuple(real(2, 174), real(0, 1), real(0.01, 1000)).map(([A, share, a]): Triangle => {
  const B = 2 + share * (176 - A);
  const [triangle] = triangleByRules({ a, A, B });
  return triangle as Triangle;
});

const differs = (one: Triangle, other: Triangle): number =>
  Math.max(
    ...SIX.map((part) => Math.abs(one[part] - other[part]) / (part < 'a' ? 60 : other.a + other.b + other.c)),
  );

it('there are nineteen ways to give a triangle', () => expect(choices).toHaveLength(19));

describe.each(choices.map((parts) => ({ parts, name: parts.join(', ') })))('given $name', ({ parts }) => {
  it('is the same triangle again, or one of two', () => {
    fc.assert(
      fc.property(triangles, (triangle) => {
        const given: Parts = Object.fromEntries(parts.map((part) => [part, triangle[part]]));
        const found = trianglesOf(given);
        expect(found.length).toBeGreaterThan(0);
        expect(Math.min(...found.map((one) => differs(one, triangle)))).toBeLessThan(1e-6);
      }),
    );
  });

  it('has, measured, the parts that were given, and the angles of a half turn', () => {
    fc.assert(
      fc.property(triangles, (triangle) => {
        const given: Parts = Object.fromEntries(parts.map((part) => [part, triangle[part]]));
        for (const corners of cornersOf(caseOf(given))) {
          const found = measured(corners);
          for (const part of parts)
            expect(Math.abs(found[part] / triangle[part] - 1), part).toBeLessThan(1e-9);
          expect(found.A + found.B + found.C).toBeCloseTo(180, 9);
        }
      }),
    );
  });

  it('is as many times as large when every side is', () => {
    fc.assert(
      fc.property(triangles, fc.integer({ min: 1, max: 10 }), (triangle, power) => {
        const times = 2 ** power;
        const scaled = (one: Triangle | Parts): Parts =>
          Object.fromEntries(
            Object.entries(one).map(([part, value]) => [
              part,
              part > 'Z' && part !== 'area' ? value * times : value,
            ]),
          );
        const given: Parts = Object.fromEntries(parts.map((part) => [part, triangle[part]]));
        const [large, small] = [trianglesOf(scaled(given)), trianglesOf(given)];
        expect(large).toHaveLength(small.length);
        large.forEach((one, i) => {
          const other = small[i] as Triangle;
          for (const part of ['a', 'b', 'c'] as const) expect(one[part] / other[part]).toBeCloseTo(times, 6);
          expect(one.area / other.area / times ** 2).toBeCloseTo(1, 9);
        });
      }),
    );
  });
});

describe('two sides and an angle that is not between them', () => {
  // Side b leaves angle A at 30°, so side a must be half of b to reach: none, one, two, one.
  it.each([
    [4.999, []],
    [5, [90]],
    [6, [56.4427, 123.5573]],
    [10, [30]],
    [12, [24.6243]],
  ])('a = %f of b = 10: angle B is %j', (a, angles) =>
    expect(trianglesOf({ a, b: 10, A: 30 }).map(({ B }) => Number(B.toFixed(4)))).toEqual(angles),
  );

  it('opposite a right or obtuse angle the side must be the longer', () => {
    for (const A of [90, 120]) {
      expect(trianglesOf({ a: 10, b: 10, A })).toEqual([]);
      expect(trianglesOf({ a: 11, b: 10, A })).toHaveLength(1);
    }
  });

  it('both triangles have the parts given, and their angles B make 180°', () => {
    fc.assert(
      fc.property(real(5, 85), real(0.01, 0.99), (A, share) => {
        const least = 10 * Math.sin((A * Math.PI) / 180);
        const found = trianglesOf({ A, b: 10, a: least + share * (10 - least) });
        expect(found).toHaveLength(2);
        const [one, two] = found as [Triangle, Triangle];
        expect(one.B).toBeLessThan(90);
        expect(one.B + two.B).toBeCloseTo(180, 8);
        expect(one.c).toBeGreaterThan(two.c);
      }),
    );
  });
});

it('sides that lie in one line make no triangle, nor do angles of 180°', () => {
  for (const sides of [
    { a: 3, b: 4, c: 7 },
    { a: 0.1, b: 0.2, c: 0.3 },
    { a: 1, b: 2, c: 9 },
  ])
    expect(trianglesOf(sides)).toEqual([]);
  expect(trianglesOf({ a: 5, A: 60, B: 120 })).toEqual([]);
  expect(trianglesOf({ a: 5, B: 179.9, C: 0.1 })).toEqual([]);
});

it('anything but three parts with a side is a mistake of the caller', () => {
  for (const parts of [{}, { a: 1, b: 2 }, { A: 1, B: 2, C: 177 }, { a: 1, b: 1, c: 1, A: 60 }])
    expect(() => trianglesOf(parts)).toThrow(RangeError);
});

// A third opinion: mathjs with 60 figures, from the sides by the cosine rule and by Heron's rule.
it('agrees with the cosine rule and Heron in 60 figures, slivers too', () => {
  const maths = create(all ?? {}, { number: 'BigNumber', precision: 60 });
  const sides = real(0.001, 10_000);
  let tried = 0;
  fc.assert(
    fc.property(sides, sides, real(0, 1), (a, b, share) => {
      const c = Math.abs(a - b) + share * 2 * Math.min(a, b);
      const [found] = trianglesOf({ a, b, c });
      if (!found || Math.min(found.A, found.B, found.C) < 0.01) return;
      tried++;
      const scope = { a: maths.bignumber(a), b: maths.bignumber(b), c: maths.bignumber(c) };
      const of = (text: string) => Number(maths.evaluate(text, scope));
      expect(found.A).toBeCloseTo(of('acos((b^2 + c^2 - a^2)/(2*b*c)) * 180/pi'), 8);
      expect(found.B).toBeCloseTo(of('acos((c^2 + a^2 - b^2)/(2*c*a)) * 180/pi'), 8);
      expect(found.C).toBeCloseTo(of('acos((a^2 + b^2 - c^2)/(2*a*b)) * 180/pi'), 8);
      const heron = of('sqrt((a+b+c)*(b+c-a)*(c+a-b)*(a+b-c))/4');
      expect(Math.abs(found.area - heron)).toBeLessThan(1e-9 * Math.max(a, b, c) ** 2);
    }),
    { numRuns: 300 },
  );
  expect(tried).toBeGreaterThan(100);
});
