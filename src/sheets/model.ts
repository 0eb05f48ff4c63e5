import type { Lesson, NamedValue } from '../lesson/lesson.js';
import type { CheckLine, Problem } from '../problems/problem.js';
import type { UnitSystem } from '../units/format.js';

/** How a sheet is set. */
export interface SheetStyle {
  readonly paper: 'a4' | 'letter';
  readonly units: UnitSystem;
  /** `large` is 18 pt, set anew for the page, never an enlargement. */
  readonly print: 'plain' | 'large';
}

/** What all sheets of a course say of themselves. */
export interface SheetHead {
  readonly course: string;
  readonly club: string;
  readonly kit: string;
}

/** What the class reads and keeps: whole lessons. */
export interface Handout {
  readonly head: SheetHead;
  readonly lessons: readonly Lesson[];
}

/** One learner's problems; the answer key is made from the same. */
export interface ProblemSheet {
  readonly head: SheetHead;
  readonly variant: string;
  /** `A` or `B`, where there are two versions. */
  readonly version?: string;
  readonly learner?: string;
  readonly lessons: readonly LessonProblems[];
}

export interface LessonProblems {
  readonly lesson: Lesson;
  readonly problems: readonly Problem[];
}

/** What lies beside the machine. */
export interface ShopCard {
  readonly head: SheetHead;
  readonly job: string;
  /** Module, teeth, cutter. */
  readonly given: readonly NamedValue[];
  /** Read from where one stands: blank diameter, depth of cut, circle and spaces, travel. */
  readonly big: readonly [BigNumber, BigNumber, BigNumber, BigNumber];
  /** Where the work should be when a quarter is done. */
  readonly quarters: readonly QuarterMark[];
  /** Root diameter, holes between the arms, approach, spindle speed, dial divisions and so on. */
  readonly lines: readonly NamedValue[];
  readonly conventions: readonly string[];
  readonly cautions: readonly string[];
  readonly checks: readonly CheckLine[];
}

export interface BigNumber {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
}

export interface QuarterMark {
  readonly mark: '¼' | '½' | '¾' | '1';
  readonly teeth: string;
  readonly angle?: string;
}
