import type { PreparedLesson } from '../lesson/prepare.js';
import type { PagedHtml } from '../print/paged.js';
import { courseBookHtml } from '../sheets/book/book.js';
import type { BookLesson } from '../sheets/book/model.js';
import { lettersOf } from '../sheets/book/symbols-in.js';
import type { LessonProblems } from '../sheets/model.js';
import type { Sheet } from './class-sheets.js';

/**
 * The lessons of a course as one book, with the problems of the class's own sheet.
 *
 * @throws {ContentError} with every fault of every text
 */
export function courseBook(lessons: readonly PreparedLesson[], sheet: Sheet): PagedHtml {
  const { head, variant, lessons: drawn } = sheet.problems();
  return courseBookHtml(
    { head, variant, lessons: lessons.map((one) => bookLesson(one, drawn)) },
    sheet.style,
  );
}

/** A lesson with its problems among those that were drawn. */
export function bookLesson({ lesson, source }: PreparedLesson, drawn: readonly LessonProblems[]): BookLesson {
  const { works, symbols } = source.matter;
  const calculations = Object.entries(works).flatMap(([name, one]): [string, string][] =>
    'calculation' in one && !('among' in one) ? [[name, String(one.calculation)]] : [],
  );
  const letters = Object.entries(symbols).map(([symbol, said]) => {
    const [, meaning = '', unit = ''] = /^(.*?)(?:\s*\(([^()]*)\))?$/.exec(said) ?? [];
    return { symbol, meaning, unit };
  });
  return {
    lesson,
    problems: drawn.find((one) => one.lesson === lesson)?.problems ?? [],
    calculations: new Map(calculations),
    letters: [...letters, ...lettersOf(works)],
  };
}
