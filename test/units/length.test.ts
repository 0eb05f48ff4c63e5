import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAngle, parseAngle } from '../../src/units/angle.js';
import { formatLength, formatNumber } from '../../src/units/format.js';
import { parseLength } from '../../src/units/length.js';

describe('parseLength', () => {
  it.each([
    ['0.8', 0.8],
    ['0,8 mm', 0.8],
    ['.5mm', 0.5],
    ['1/32in', 0.79375],
    ['1 31/32 in', 50.00625],
    ['2-23/32in', 69.05625],
    ['0.0315"', 0.8001],
    ['-3', -3],
    ['−3.00\u202Fmm', -3],
    ['−1 1/2 in', -38.1],
  ])('%s', (text, mm) => expect(parseLength(text)).toBeCloseTo(mm, 10));

  it.each([
    '',
    'mm',
    '1/0',
    '1..2',
    '1 2',
    'NaN',
    'Infinity',
    '3 cm',
    '1/2/3',
    '9'.repeat(400),
    `${'9'.repeat(308)}in`,
  ])('refuses "%s"', (text) => expect(parseLength(text)).toBeUndefined());
});

describe('angles', () => {
  it.each([
    ['5.625', 5.625],
    ['5d37m30s', 5.625],
    ['5°37′30″', 5.625],
    ['5° 37\' 30"', 5.625],
    ['-0d30m', -0.5],
    ['−5° 37′ 30″', -5.625],
  ])('parseAngle(%s)', (text, degrees) => expect(parseAngle(text)).toBeCloseTo(degrees, 12));

  it('parseAngle refuses sixty minutes and words', () => {
    expect(parseAngle('5d60m')).toBeUndefined();
    expect(parseAngle('five')).toBeUndefined();
  });

  it('parseAngle refuses what is past all numbers', () => {
    expect(parseAngle('9'.repeat(400))).toBeUndefined();
    expect(parseAngle(`${'9'.repeat(400)}d1m`)).toBeUndefined();
  });

  it('what formatAngle writes, parseAngle reads, to half a second', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (degrees) => {
        const read = parseAngle(formatAngle(degrees)) ?? Number.NaN;
        expect(Math.abs(read - degrees) * 3600).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
    );
  });

  it('carries rounded seconds', () => expect(formatAngle(5.9999999)).toBe('6° 0′ 0″'));
});

describe('formatting', () => {
  it('rounds the decimal figure half away from zero', () => {
    expect(formatNumber(1.005, 2)).toBe('1.01');
    expect(formatNumber(-0.001, 2)).toBe('0.00');
    expect(formatNumber(-1.5, 0)).toBe('−2');
  });

  it('states lengths in either system', () => {
    expect(formatLength(50.208)).toBe('50.21\u202Fmm');
    expect(formatLength(50.208, 'inch')).toBe('1.977\u202Fin');
  });
});
