import type { WorkingStep } from '../calculations/working.js';
import { withNumbers } from '../formula/formula.js';
import { symbolTex, texSides } from '../formula/tex.js';
import type { NamedValue } from '../lesson/lesson.js';
import { setOwnMaths } from './maths.js';
import type { SheetStyle } from './model.js';
import { rightSides } from './right-sides.js';
import { settingOf } from './setting.js';

/** A step of working as its template wants it: HTML of each side, and each line after an equals sign. */
export interface StepView {
  readonly say?: string;
  readonly left?: string;
  /** The formula, and with its numbers in; one where it has no symbols. */
  readonly rights?: readonly string[];
  readonly result?: string;
}

/** A step set out, its fractions as tall as on a line of their own: small ones are hard to read. */
export function stepView(step: WorkingStep): StepView {
  if ('say' in step) return { say: step.say };
  const { formula, numbers, result } = step;
  const { left } = texSides(formula);
  return {
    left: left === undefined ? '' : setOwnMaths(left),
    rights: rightSides(formula, numbers, result).map((right) => setOwnMaths(right, 'line')),
    result,
  };
}

/** Whether steps cannot stand side by side: formula, numbers in, result, each under the one of the step before. */
export function isTooWide(steps: readonly WorkingStep[], style: SheetStyle): boolean {
  const widest = [0, 0, 0];
  for (const step of steps) {
    if ('say' in step) continue;
    const numbers = withNumbers(step.formula, step.numbers);
    [step.formula, numbers, step.result].forEach((text, column) => {
      widest[column] = Math.max(widest[column] ?? 0, text.length);
    });
  }
  const { textSize, maxWidth } = settingOf(style);
  const letters = widest.reduce((sum, length) => sum + length, 8);
  return letters * 0.5 * textSize > maxWidth;
}

/** The equals sign, typeset like the formulas beside it. */
export const equals = (): string => setOwnMaths('=');

export interface ValueView {
  readonly name: string;
  readonly symbol: string;
  readonly value: string;
}

/** A named value with its symbol typeset. */
export function valueView({ name, symbol, value }: NamedValue): ValueView {
  return { name, symbol: symbol && setOwnMaths(symbolTex(symbol)), value };
}
