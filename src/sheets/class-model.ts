import type { Lesson } from '../lesson/lesson.js';
import type { MarkLetter } from './mark-count.js';
import type { SheetHead } from './model.js';
import type { ShortAnswer } from './short-answer.js';

/** A class and what was asked of it: what an instructor marks from. */
export interface ClassSet {
  readonly head: SheetHead;
  /** Of the class; each line has its own. */
  readonly variant: string;
  readonly lessons: readonly Lesson[];
  /** In the order they sit. */
  readonly lines: readonly ClassLine[];
}

/** One learner, or one of two versions that nobody is named for. */
export interface ClassLine {
  /** Empty where it is not known. */
  readonly seat: string;
  readonly learner: string;
  /** `A` or `B` where there are two versions; else empty. */
  readonly version: string;
  /** As their sheet says it. */
  readonly variant: string;
  /** The problems of each lesson. */
  readonly lessons: readonly (readonly ClassProblem[])[];
}

/** One problem of one learner's, cut down to what is looked at while marking. */
export interface ClassProblem {
  /** As it stands on the sheet: `16.3`. */
  readonly number: string;
  /** What can be had; `ft` is the share of A that may follow from an earlier wrong answer. */
  readonly marks: Readonly<Record<MarkLetter, number>>;
  readonly parts: readonly ClassPart[];
}

export interface ClassPart extends ShortAnswer {
  /** `(a)`; empty where there is one. */
  readonly letter: string;
}
