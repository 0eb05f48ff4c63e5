import type { PreparedLesson } from '../lesson/prepare.js';
import { type OfClass, practiceLesson } from '../practice/practice-lesson.js';
import { practiceFile, practiceIndex, practicePage } from '../practice/site.js';
import type { Document } from './plan.js';

/** What a learner practises on at home: an index, and a page for each lesson that has problems. */
export function practiceDocuments(lessons: readonly PreparedLesson[], about: OfClass): Document[] {
  const pages = lessons
    .filter(({ lesson }) => lesson.problems.length > 0)
    .map(({ lesson }) => practiceLesson(lesson, about));
  return [
    { kind: 'practice', name: 'practice/index.html', data: () => practiceIndex(about.head, pages) },
    ...pages.map(
      (page): Document => ({
        kind: 'practice',
        name: `practice/${practiceFile(page)}`,
        data: () => practicePage(page),
      }),
    ),
  ];
}
