import type { Expected } from '../problems/expected.js';

/** The least and the most that are taken for a number, once rounded to its step; undefined for anything else. */
export function rangeOf(expects: Expected): { readonly from: number; readonly to: number } | undefined {
  if (expects.kind !== 'number') return undefined;
  const { value, step, within } = expects;
  if (step === 0) return { from: value, to: value };
  const reach = Math.floor((within + step / 100) / step);
  const place = Math.round(value / step);
  const at = (steps: number): number => Number((steps * step).toPrecision(12));
  return { from: at(place - reach), to: at(place + reach) };
}
