import { describe, expect, it } from 'vitest';
import { evaluateFormula, FormulaError, symbolsOf, withNumbers } from '../../src/formula/formula.js';

describe('formulas', () => {
  it('evaluates the right-hand side', () =>
    expect(evaluateFormula('a = m*(z + n)/2', { m: 0.8, z: 60, n: 8 })).toBeCloseTo(27.2));
  it('knows pi and the short list of functions', () =>
    expect(evaluateFormula('sin(pi/6) + sqrt(4) - max(1, 2)', {})).toBeCloseTo(0.5));
  it('names its symbols', () => expect(symbolsOf('d_a = m*(z + 2.76)')).toEqual(['m', 'z']));
  it('puts the numbers in', () =>
    expect(withNumbers('a = m*(z + n)/2', { m: '0.8', z: '60', n: '8' })).toBe('0.8*(60 + 8)/2'));

  it.each([
    'import("fs")',
    'evaluate("1+1")',
    'createUnit("x")',
    'parse("1")',
    'x = (y = 3)',
    'f(t) = t',
    '[1, 2]',
    '"text"',
    '{a: 1}',
    'm.constructor',
    'm["constructor"]',
    '1; 2',
    'm > 1',
    'm^m^m = 3*m',
    '}{ = m',
    'm + true',
    'm + null',
    'cos',
    '2 +',
    '',
  ])('refuses %s', (text) => expect(() => evaluateFormula(text, { m: 1, y: 1 })).toThrow());

  it('refuses a value that is not finite, and an unknown symbol', () => {
    expect(() => evaluateFormula('z + a$', { z: 1 })).toThrow(FormulaError);
    expect(() => evaluateFormula('1/m', { m: 0 })).toThrow(/finite/);
    expect(() => evaluateFormula('m + q', { m: 0 })).toThrow();
  });
});
