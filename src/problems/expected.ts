/**
 * What is taken as the answer to one question, as plain data: a practice page, a mark sheet or another program judges
 * by it. Numbers are as they are shown, in the unit beside the box.
 */
export type Expected =
  | ExpectedNumber
  | ExpectedNumbers
  | ExpectedMoves
  | ExpectedWord
  | ExpectedSet
  | ExpectedChoice
  | ExpectedOrder;

/** One number. */
export interface ExpectedNumber {
  readonly kind: 'number';
  /** Rounded as asked. */
  readonly value: number;
  /** `mm`, `in`, `°`, `rev/min`, `%`; empty for a count. */
  readonly unit: string;
  /** What an answer is rounded to before it is judged; 0 for a whole count, which is not rounded. */
  readonly step: number;
  /** Largest difference from the value that is taken; 0 for a whole count. */
  readonly within: number;
  /** An angle that is told in degrees and minutes, or seconds too. */
  readonly angle?: 'minute' | 'second';
}

/** Several numbers in order, such as the passes of a cut. */
export interface ExpectedNumbers {
  readonly kind: 'numbers';
  readonly each: readonly ExpectedNumber[];
}

/** A movement of the crank: any one of these, or the same part of a turn said otherwise; none when it is not possible. */
export interface ExpectedMoves {
  readonly kind: 'moves';
  readonly turns: number;
  readonly moves: readonly { readonly holes: number; readonly circle: number }[];
}

/** One word or phrase; where it is one of two, the other as well. */
export interface ExpectedWord {
  readonly kind: 'word';
  readonly word: string;
  readonly other?: string;
}

/** All of these and no others, in any order; none of them when there are none. */
export interface ExpectedSet {
  readonly kind: 'set';
  readonly items: readonly string[];
}

/** One of the options that are printed with letters. */
export interface ExpectedChoice {
  readonly kind: 'choice';
  readonly letter: string;
  /** Of all options, in their order. */
  readonly letters: readonly string[];
}

/** All the options that are printed with letters, in this order. */
export interface ExpectedOrder {
  readonly kind: 'order';
  readonly letters: readonly string[];
}

/** The letters that are right, in their order; none where the answer is written. */
export function lettersOf(expects: Expected): readonly string[] {
  if (expects.kind === 'order') return expects.letters;
  return expects.kind === 'choice' ? [expects.letter] : [];
}
