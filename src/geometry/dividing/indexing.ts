import { greatestCommonDivisor } from '../fractions.js';

/** A crank movement on one circle of a plate: so many spaces beyond the whole turns. */
export interface CircleSetting {
  readonly holes: number;
  readonly circle: number;
}

/**
 * Simple indexing: the crank's turns for one division are ratio/divisions; a circle serves when the fraction's
 * denominator, in lowest terms, divides its count of holes. Whole numbers throughout.
 */
export function simpleIndexing(
  divisions: number,
  ratio: number,
  circles: readonly number[],
): { readonly turns: number; readonly settings: readonly CircleSetting[] } {
  const turns = Math.floor(ratio / divisions);
  const rest = ratio % divisions;
  const common = greatestCommonDivisor(divisions, rest);
  const denominator = divisions / common;
  const settings = circles
    .filter((circle) => circle % denominator === 0)
    .map((circle) => ({ holes: (rest / common) * (circle / denominator), circle }));
  return { turns, settings };
}

/** Crank position after a count of divisions, from the start, on a circle that serves: whole turns and spaces. */
export function crankAfter(count: number, divisions: number, ratio: number, circle: number) {
  const spaces = (count * ratio * circle) / divisions;
  return { turns: Math.floor(spaces / circle), holes: spaces % circle };
}
