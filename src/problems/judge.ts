import { roundTo } from '../units/format.js';
import type { ExpectedNumber } from './expected.js';

/** Whether a number in the unit that is shown is taken as right, once it is rounded as asked. */
export function takesNumber({ value, step, within }: ExpectedNumber, shown: number): boolean {
  if (step === 0) return Math.abs(shown - value) < 1e-6;
  return Math.abs(roundTo(shown / step, 0) * step - value) <= within + step / 100;
}
