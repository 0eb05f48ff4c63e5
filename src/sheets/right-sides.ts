import { texSides } from '../formula/tex.js';

/**
 * What stands after the equals signs of a formula, as TeX: its right side, and that with its numbers in.
 * `spaces = 8 = 8` says no more than `spaces = 8`, so what is the same as the one before or the result is left out.
 */
export function rightSides(
  formula: string,
  numbers: Readonly<Record<string, string>>,
  result: string | undefined,
): readonly string[] {
  const rule = texSides(formula).right;
  const worked = texSides(formula, numbers).right;
  return worked === rule || worked === result ? [rule] : [rule, worked];
}
