import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, it } from 'vitest';
import { fraction, greatestCommonDivisor, inverse, times, valueOf } from '../../src/geometry/fractions.js';
import { parseFraction } from '../../src/units/fraction.js';

const whole = fc.integer({ min: -1_000_000, max: 1_000_000 });
const notNought = whole.filter((value) => value !== 0);

it('agrees with a library of exact fractions', () => {
  fc.assert(
    fc.property(whole, notNought, notNought, notNought, (a, b, c, d) => {
      const product = times(fraction(a, b), fraction(c, d));
      const theirs = new Fraction(a, b).mul(c, d);
      expect([product.numerator, product.denominator]).toEqual([
        Number(theirs.s * theirs.n),
        Number(theirs.d),
      ]);
      expect(valueOf(product)).toBeCloseTo(theirs.valueOf(), 6);
      if (a !== 0)
        expect(times(fraction(a, b), inverse(fraction(a, b)))).toEqual({ numerator: 1, denominator: 1 });
      expect(greatestCommonDivisor(a, b)).toBe(Number(new Fraction(a).gcd(b).n));
    }),
  );
});

it('refuses what is no exact fraction', () => {
  for (const [a, b] of [
    [1, 0],
    [1.5, 2],
    [2 ** 53, 3],
    [Number.NaN, 1],
  ] as const)
    expect(() => fraction(a, b)).toThrow(RangeError);
});

it('reads exact numbers as people write them', () => {
  const read = (text: string) => {
    const parsed = parseFraction(text);
    return parsed && new Fraction(parsed.numerator, parsed.denominator).toFraction(true);
  };
  expect(['12', '7.5', '.25', '5/7', '1 1/14', '1-1/14', '-3/4', ' 2.50 ', '−1 1/2'].map(read)).toEqual([
    '12',
    '7 1/2',
    '1/4',
    '5/7',
    '1 1/14',
    '1 1/14',
    '-3/4',
    '2 1/2',
    '-1 1/2',
  ]);
  for (const text of ['', '1/0', '1,5', '1e3', 'x', '1/2/3', '0x10', '--1', '1 2', '9'.repeat(40)])
    expect(parseFraction(text), text).toBeUndefined();
});
