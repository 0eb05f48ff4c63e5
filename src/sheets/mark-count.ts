import type { Part, Problem } from '../problems/problem.js';

/** Method, accuracy, on its own; and accuracy that follows through from an earlier wrong answer. */
export const MARK_LETTERS = ['M', 'A', 'B', 'ft'] as const;
export type MarkLetter = (typeof MARK_LETTERS)[number];

/**
 * The marks of a problem by their letter. `ft` is no further mark: so many of the accuracy marks may be given for
 * right working from an earlier wrong answer.
 */
export function markCount({ parts }: Problem): Record<MarkLetter, number> {
  const count = (letter: string, some: readonly Part[]) =>
    some
      .flatMap(({ marks }) => marks)
      .filter(({ code }) => code.startsWith(letter))
      .reduce((sum, { code }) => sum + Number(/\d+$/.exec(code)?.[0] ?? 1), 0);
  const later = parts.filter(({ follows = [] }) => follows.length > 0);
  return { M: count('M', parts), A: count('A', parts), B: count('B', parts), ft: count('A', later) };
}
