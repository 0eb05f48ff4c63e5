import type { LessonProblems, SheetHead } from '../model.js';
import type { Letter } from './letters.js';

/** A whole course to read through: its lessons, each with the problems of one variant. */
export interface CourseBook {
  readonly head: SheetHead;
  readonly variant: string;
  readonly lessons: readonly BookLesson[];
}

export interface BookLesson extends LessonProblems {
  /** The calculation of each of the lesson's own workings, by the working's name. */
  readonly calculations: ReadonlyMap<string, string>;
  /** What the lesson itself says that its letters stand for. */
  readonly letters: readonly Letter[];
}

/** The page of an anchor, from 1; undefined for one that is not known yet. */
export type PageOf = (anchor: string) => number | undefined;

/** A text in the order of a list, and where a link on it leads. */
export interface PageLink {
  readonly anchor: string;
  /** As it is printed: `12`, `12–15`. */
  readonly said: string;
  /** Where the term is explained. */
  readonly main: boolean;
}
