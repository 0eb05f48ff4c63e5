import { roundTo } from '../../units/format.js';
import type { ExpectedNumber } from '../expected.js';

/** Whether a number in the unit that is shown is taken as right, once it is rounded as asked. */
export function takesNumber({ value, step, within }: ExpectedNumber, shown: number): boolean {
  if (step === 0) return Math.abs(shown - value) < 1e-6;
  return Math.abs(roundTo(shown / step, 0) * step - value) <= within + step / 100;
}

/**
 * Whether a number that was rounded from another unit is taken as right: one that may have been rounded from a right
 * one, if it was not rounded much more than is allowed.
 *
 * @param half half of one in its last place
 */
export function takesConverted(expects: ExpectedNumber, shown: number, half: number): boolean {
  const allowed = 1.5 * Math.max(expects.step, expects.within);
  return half <= allowed && [-half, 0, half].some((by) => takesNumber(expects, shown + by));
}

/**
 * How far a number is from what a slip gives, if it would be taken as that: rounded as asked, within the allowance
 * for a number of that size. A count that comes to no whole number is written with some of its decimals.
 *
 * @param half half of one in the last place of the number
 */
export function fromSlip(
  { value, step, within }: ExpectedNumber,
  gives: number,
  { shown, half }: { readonly shown: number; readonly half: number },
): number | undefined {
  const apart = Math.abs(rounded(shown, step) - rounded(gives, step));
  const share = value === 0 ? 1 : Math.min(1, Math.abs(gives / value));
  const allowed =
    step > 0
      ? Math.min(within, Math.max(step, within * share)) + step / 100
      : half < 0.5
        ? half + 1e-6
        : 1e-6;
  return apart <= allowed ? apart : undefined;
}

const rounded = (shown: number, step: number): number =>
  step === 0 ? shown : roundTo(shown / step, 0) * step;
