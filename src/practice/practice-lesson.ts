import type { Kit } from '../kit/schema.js';
import type { Lesson } from '../lesson/lesson.js';
import type { SheetHead } from '../sheets/model.js';
import type { UnitSystem } from '../units/format.js';

/** What the practice page of a lesson is made from: plain data, which is written into the page. */
export interface PracticeLesson extends OfLesson, OfClass {}

type OfLesson = Pick<Lesson, 'name' | 'number' | 'title' | 'goals' | 'cautions' | 'problems'>;

/** What all pages of a class have in common. */
export interface OfClass {
  readonly head: SheetHead;
  /** The folder of the course: progress is kept under it. */
  readonly course: string;
  readonly kit: Kit;
  /** Those of the class; the learner may ask for the others. */
  readonly units: UnitSystem;
  /** Whose numbers the page begins with. */
  readonly code: string;
}

/** A lesson as a class practises it. */
export function practiceLesson(
  { name, number, title, goals, cautions, problems }: OfLesson,
  about: OfClass,
): PracticeLesson {
  return { name, number, title, goals, cautions, problems, ...about };
}

/** The same as text, and back. A lesson without a number has none there either. */
export const practiceText = (lesson: PracticeLesson): string => JSON.stringify(lesson);
export const readPractice = (text: string): PracticeLesson => ({ number: undefined, ...JSON.parse(text) });
