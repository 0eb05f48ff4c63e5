import { z } from 'zod';

/** A length in mm. */
export const length = (least: number, most: number) =>
  z.number().min(least).max(most).describe(`a length in mm, ${least} to ${most}`);

/** A whole number. */
export const count = (least: number, most: number) =>
  z.number().int().min(least).max(most).describe(`a whole number, ${least} to ${most}`);

/** Tooth module, mm. */
export const toothModule = () => z.number().min(0.05).max(5).describe('a module in mm, 0.05 to 5');

/** One of a few words; a word that is a figure with two decimals, `2.95`, may be given as a number. */
export const word = <const W extends readonly [string, ...string[]]>(...words: W) =>
  z
    .preprocess((value) => (typeof value === 'number' ? value.toFixed(2) : value), z.enum(words))
    .describe(`one of ${words.join(', ')}`);

/** Several numbers, as a list or as text with commas between: `1, 1, 0.36`. */
export const numbers = (of: z.ZodNumber, most: number, what: string) =>
  z.preprocess(listed, z.array(of).min(1).max(most)).describe(`${what}, ${most} at most`);

function listed(value: unknown): unknown {
  if (typeof value === 'number') return [value];
  return typeof value === 'string'
    ? value.split(',').map((part) => (part.trim() === '' ? NaN : Number(part)))
    : value;
}
