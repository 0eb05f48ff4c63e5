import type { Mark, Problem } from '../problems/problem.js';

/** What a learner is told of a problem's kind; the plain ones need no word. */
export const LEVELS = { a: '', b: '', c: 'two steps', d: 'think first' } as const;

/** `M1` is one mark. */
export function marksIn(marks: readonly Mark[]): number {
  return marks.reduce((sum, { code }) => sum + Number(/\d+$/.exec(code)?.[0] ?? 1), 0);
}

/** All the marks of a problem. */
export function marksOf({ parts }: Problem): number {
  return parts.reduce((sum, part) => sum + marksIn(part.marks), 0);
}

/** `(a)` before a part of several. */
export function letterOf(place: number, { parts }: Problem): string {
  return parts.length > 1 ? `(${String.fromCharCode(97 + place)})` : '';
}
