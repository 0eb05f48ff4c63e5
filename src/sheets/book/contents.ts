import { partOf } from '../part.js';
import { render } from '../templates.js';
import { BACK } from './back.js';
import { problemsAnchor } from './lesson-part.js';
import type { CourseBook, PageOf } from './model.js';
import { pageWord } from './page-list.js';

/** The contents: each part with its lessons and their problems, and what stands at the end. */
export function contentsHtml({ lessons }: CourseBook, pageOf: PageOf): string {
  const groups: { part: string; lessons: object[] }[] = [];
  for (const { lesson, problems } of lessons) {
    const { page } = partOf(lesson);
    if (groups.at(-1)?.part !== lesson.part) groups.push({ part: lesson.part, lessons: [] });
    groups.at(-1)?.lessons.push({
      number: lesson.number,
      title: lesson.title,
      anchor: page,
      page: pageWord(pageOf(page)),
      problems:
        problems.length > 0
          ? { anchor: problemsAnchor(page), page: pageWord(pageOf(problemsAnchor(page))) }
          : undefined,
    });
  }
  const back = Object.values(BACK).map(({ page, title }) => ({
    title,
    anchor: page,
    page: pageWord(pageOf(page)),
  }));
  return render('book-contents', { groups, back });
}
