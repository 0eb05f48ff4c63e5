import type { FormulaStep, WorkingStep } from '../calculations/working.js';
import { plainFormula, withNumbers } from '../formula/formula.js';
import { texSides } from '../formula/tex.js';
import { setOwnMaths } from './maths.js';
import { rightSides } from './right-sides.js';

const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/\s*\*\s*/g, ' × '],
  [/(?<=\s)-(?=\s)/g, '−'],
];

/** A formula with the signs that are read aloud. */
export const readable = (formula: string): string =>
  SIGNS.reduce((text, [sign, word]) => text.replace(sign, word), formula);

/** A step of working as a line of plain text: `d_a = m × (z + 2.76) = 0.8 × (60 + 2.76) = 50.208 mm`. */
export function plainStep(step: WorkingStep): string {
  if ('say' in step) return step.say;
  const [bare, numbers] = [plainFormula(step.formula), withNumbers(step.formula, step.numbers)].map(readable);
  const same = bare?.slice(bare.indexOf('=') + 1).trim() === numbers || numbers === step.result;
  return [bare, ...(same ? [] : [numbers]), step.result].join(' = ');
}

/** A formula with its numbers in as MathML, and what it comes to as text. */
export function mathsStep({ formula, numbers, result }: FormulaStep): {
  readonly mathml: string;
  readonly result: string;
} {
  const { left } = texSides(formula);
  const sides = [...(left === undefined ? [] : [left]), ...rightSides(formula, numbers, result)];
  return { mathml: setOwnMaths(sides.join(' = '), 'line', 'mathml'), result };
}
