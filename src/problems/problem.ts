import type { WrongCut } from '../calculations/cutting/given.js';
import type { WorkingStep } from '../calculations/working.js';
import type { Expected } from './expected.js';
import type { Shown } from './shown.js';

/** What a lesson or problem may name, by name; a working's found values stand under its name. Lengths mm. */
export type Values = Readonly<Record<string, unknown>>;

/** One problem as one learner gets it: everything that a sheet and its key print. */
export interface Problem {
  /** Its key in the lesson. */
  readonly name: string;
  /** a direct, b rearranged, c in two steps, d choose or diagnose. */
  readonly level: 'a' | 'b' | 'c' | 'd';
  /** The question: Markdown with `{{…}}`, to be filled from `values`. */
  readonly ask: string;
  /** What the question may name, as it was drawn, and rounded where it is told. */
  readonly values: Values;
  /** The same before any was rounded to be told. */
  readonly drawn: Values;
  /** What is printed under the question: a working or a table with a line left blank, or with a line wrong. */
  readonly shown?: Shown;
  /** The same problem with other numbers, to be printed before it with its working. */
  readonly example?: Problem;
  /** At least one. A problem with one part has no text of its own there. */
  readonly parts: readonly Part[];
}

/** One thing that is asked, and all that the key says of it. Texts are for the reader, in the sheet's units. */
export interface Part {
  /** Markdown with `{{…}}`; empty when the problem's own text asks it. */
  readonly ask: string;
  /** What stands beside the answer box, such as `mm`; empty for a word or a count. */
  readonly unit: string;
  /** What there is to choose from or to put in order; none where the answer is written. */
  readonly options?: readonly Option[];
  /** The start of its working, which the learner ends. */
  readonly shown?: Shown;
  /** Lines of room for working. */
  readonly room: number;
  readonly answer: string;
  /** What is taken as right, such as `50.20 to 50.22 mm` or `any one of these`. */
  readonly accepted: string;
  /** The same as data, to judge by. */
  readonly expects: Expected;
  readonly method: readonly WorkingStep[];
  readonly marks: readonly Mark[];
  readonly slips: readonly SlipLine[];
  readonly checks: readonly CheckLine[];
  /** What is right by the working of one who slipped in an earlier part. */
  readonly follows?: readonly FollowLine[];
}

/** One of several, each with its letter. */
export interface Option {
  readonly letter: string;
  /** Markdown with `{{…}}`. */
  readonly text: string;
}

/** What follows from a wrong answer to an earlier part, when all is worked rightly from there. */
export interface FollowLine {
  /** The earlier part, from 0. */
  readonly part: number;
  /** What was given there. */
  readonly gives: string;
  /** What that leads to here. */
  readonly answer: string;
}

/** Marks as schools write them: `M1` for method, `A1` for accuracy, `B1` independent. */
export interface Mark {
  readonly code: string;
  readonly for: string;
}

/** What a wrong way gives, and what to say of it. */
export interface SlipLine {
  readonly gives: string;
  readonly says: string;
  /** What it gives as a number in the unit beside the box; for a move of the crank, spaces on the first circle. */
  readonly shown?: number;
  /** The wheel that is cut with it, where it makes one. */
  readonly cut?: WrongCut;
}

/** The second route's word on an answer. */
export interface CheckLine {
  readonly source: string;
  readonly value: string;
  /** How near the two are: `exactly`, or `to 0.000 001 mm`. */
  readonly agreement: string;
}
