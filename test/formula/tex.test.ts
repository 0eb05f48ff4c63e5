import katex from 'katex';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/calculations/catalogue.js';
import { workInFull } from '../../src/calculations/work.js';
import { symbolsOf } from '../../src/formula/formula.js';
import { formulaTex, numberTex, symbolTex, texSides } from '../../src/formula/tex.js';
import { sensible } from '../calculations/sensible/index.js';

describe('a formula as TeX', () => {
  it.each([
    ['d_a = m*(z + 2.76)', 'd_{a} = m (z + 2.76)'],
    ['a = m*(z + n)/2', 'a = \\frac{m (z + n)}{2}'],
    ['g = sqrt(h*(D - h))', 'g = \\sqrt{h (D - h)}'],
    ['u = D/2 - sqrt((D/2)^2 - s^2)', 'u = \\frac{D}{2} - \\sqrt{\\left( \\frac{D}{2} \\right)^{2} - s^{2}}'],
    ['S = 1000*V/(pi*D)', 'S = \\frac{1000 V}{\\pi\\,D}'],
    ['d_a = d + 2*h_a', 'd_{a} = d + 2 h_{a}'],
    ['m*z', 'm\\,z'],
    ['2*3', '2 \\times 3'],
    ['m*2', 'm \\times 2'],
    ['back = teeth*spaces', '\\text{back} = \\text{teeth} \\times \\text{spaces}'],
    ['((m))', 'm'],
    ['(a - b)*(c - d)', '(a - b) (c - d)'],
    ['a - -b^2', 'a - \\left( -b^{2} \\right)'],
    ['(a*b)^2', '(a\\,b)^{2}'],
    ['a^(b + 1)', 'a^{b + 1}'],
    ['floor(T/t)', '\\left\\lfloor \\frac{T}{t} \\right\\rfloor'],
    ['abs(a - b)', '|a - b|'],
    ['2*sin(A/2)', '2 \\sin\\left( \\frac{A}{2} \\right)'],
    ['asin(heel/radius)/2', '\\frac{\\arcsin(\\text{heel}/\\text{radius})}{2}'],
    ['sin((a + b)/2)/c', '\\frac{\\sin\\left( \\frac{a + b}{2} \\right)}{c}'],
    ['max(a, b) + atan2(y, x)', '\\max(a,\\,b) + \\operatorname{atan2}(y,\\,x)'],
  ])('%s', (formula, tex) => expect(formulaTex(formula)).toBe(tex));

  it.each([
    ['d_a = m*(z + 2.76)', { m: '0.8', z: '60' }, 'd_{a} = 0.8 \\times (60 + 2.76)'],
    ['a = m*(z + n)/2', { m: '0.8', z: '60', n: '8' }, 'a = \\frac{0.8 \\times (60 + 8)}{2}'],
    ['d_a = d + 2*h_a', { d: '48', h_a: '1.104' }, 'd_{a} = 48 + 2 \\times 1.104'],
    ['S = 1000*V/(pi*D)', { V: '60', D: '24' }, 'S = \\frac{1000 \\times 60}{\\pi \\times 24}'],
    ['y = a - b', { a: '1', b: '−0.5' }, 'y = 1 - (-0.5)'],
    ['y = b^2', { b: '−3' }, 'y = (-3)^{2}'],
    ['y = 2*b', { b: '−3' }, 'y = 2 \\times (-3)'],
    ['y = A/2', { A: '6° 25′ 43″' }, 'y = \\frac{\\text{6° 25′ 43″}}{2}'],
  ])('%s with its numbers in', (formula, numbers, tex) => {
    expect(formulaTex(formula, numbers as Record<string, string>)).toBe(tex);
  });

  it('sets both sides apart, so that a page can align them', () => {
    expect(texSides('d = m*z')).toEqual({ left: 'd', right: 'm\\,z' });
    expect(texSides('m*z')).toEqual({ left: undefined, right: 'm\\,z' });
  });

  it('names symbols: one letter slanted, words upright', () => {
    expect(['d_an', 'depthOfCut', 'x1', 'pi', 'N', 'f_p'].map(symbolTex)).toEqual([
      'd_{\\text{an}}',
      '\\text{depth of cut}',
      'x_{1}',
      '\\pi',
      'N',
      'f_{p}',
    ]);
  });

  it('keeps a thin space between thousands', () => expect(numberTex('21\u202F600')).toBe('21\\,600'));

  it('refuses what is no arithmetic', () => expect(() => formulaTex('x = y = 1')).toThrow());
});

/** Ways to give a calculation that lead to other formulas than the sensible ones do. */
const MORE: Readonly<Record<string, readonly Record<string, unknown>[]>> = {
  'wheel.blank': ['2.95', '3.38', '2.45', '3.00'].map((depthForm) => ({
    teeth: 60,
    module: 0.8,
    convention: '2.76',
    depthForm,
  })),
  'pinion.blank': [6, 7, 8, 10, 12, 16].map((leaves) => ({ leaves, module: 0.8 })),
  'module.convert': [{ diametralPitch: 32 }, { circularPitch: 2.5 }],
};

describe('every formula of the catalogue', () => {
  const formulas = new Set<string>();
  for (const { name } of catalogue)
    for (const given of [sensible[name] ?? {}, ...(MORE[name] ?? [])]) {
      const { steps, slips } = workInFull(name, given);
      for (const step of steps) if (typeof step === 'string') formulas.add(step);
      for (const { formula } of Object.values(slips)) formulas.add(formula);
    }

  it.each([...formulas])('%s is set, bare and with its numbers in', (formula) => {
    const numbers = Object.fromEntries(symbolsOf(formula).map((symbol, place) => [symbol, `${place + 2}.5`]));
    const filled = formulaTex(formula, numbers);
    for (const tex of [formulaTex(formula), filled])
      expect(katex.renderToString(tex, { throwOnError: true, strict: 'error' })).toContain('katex');
    // No two numbers may run into one.
    expect(filled).not.toMatch(/\d(?: |\\,)\d/);
  });
});
