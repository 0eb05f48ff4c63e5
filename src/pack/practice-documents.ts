import type { PreparedLesson } from '../lesson/prepare.js';
import type { PracticeLesson } from '../practice/practice-lesson.js';
import { practiceFile, practiceIndex, practicePage } from '../practice/site.js';
import type { Setting } from '../problems/draw.js';
import type { SheetHead } from '../sheets/model.js';
import type { CourseToMake, Document } from './plan.js';

/** What a learner practises on at home: an index, and a page for each lesson that has problems. */
export function practiceDocuments(
  course: CourseToMake,
  lessons: readonly PreparedLesson[],
  {
    head,
    variant,
    setting,
  }: { readonly head: SheetHead; readonly variant: string; readonly setting: Setting },
): Document[] {
  const pages = lessons
    .filter(({ lesson }) => lesson.problems.length > 0)
    .map(({ lesson: { name, number, title, goals, cautions, problems } }): PracticeLesson => {
      const { kit, units } = setting;
      return {
        name,
        number,
        title,
        goals,
        cautions,
        problems,
        head,
        course: course.name,
        kit,
        units,
        code: variant,
      };
    });
  return [
    { kind: 'practice', name: 'practice/index.html', data: () => practiceIndex(head, pages) },
    ...pages.map(
      (page): Document => ({
        kind: 'practice',
        name: `practice/${practiceFile(page)}`,
        data: () => practicePage(page),
      }),
    ),
  ];
}
