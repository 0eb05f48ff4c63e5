import type { Lesson } from '../../lesson/lesson.js';
import { partOf } from '../part.js';

/** A lesson as a list names it: by its number, or its title. */
export interface LessonLink {
  readonly anchor: string;
  readonly said: string;
}

export function linkTo(lesson: Lesson): LessonLink {
  return {
    anchor: partOf(lesson).page,
    said: lesson.number === undefined ? lesson.title : String(lesson.number),
  };
}
