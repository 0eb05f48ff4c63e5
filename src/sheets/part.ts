import type { Lesson } from '../lesson/lesson.js';
import type { Part } from './page.js';

/** A lesson's own pages, with its number and title at their head. */
export function partOf(lesson: Lesson): Part {
  const { name, number, title } = lesson;
  return {
    page: `lesson-${name.replace(/[^A-Za-z0-9]+/g, '-')}`,
    head: number === undefined ? title : `${number}  ${title}`,
  };
}
