import { counted } from '../../units/words.js';
import type { Faults } from '../fault.js';
import { lessonHtml } from '../handout.js';
import { chapterOf } from '../handout-blocks.js';
import type { SheetStyle } from '../model.js';
import { partOf } from '../part.js';
import { marksOf } from '../problem-marks.js';
import { problemViews } from '../problem-sheet.js';
import { render } from '../templates.js';
import { equals } from '../working-view.js';
import type { BookLesson, CourseBook } from './model.js';

/** Where the problems of a lesson are, by the anchor of the lesson. */
export const problemsAnchor = (lesson: string): string => `${lesson}-problems`;

/** A lesson as its handout has it, and its problems after it. */
export function lessonPartHtml(
  { lesson, problems }: BookLesson,
  { head }: CourseBook,
  style: SheetStyle,
  faults: Faults,
): string {
  const html = lessonHtml(lesson, { style, kit: head.kit, faults, problemsAt: 'at the end of this lesson' });
  if (problems.length === 0) return html;
  const chapter = chapterOf(lesson);
  const set = render('book-problems', {
    anchor: problemsAnchor(partOf(lesson).page),
    first: `${chapter}.1`,
    last: problems.length > 1 ? `${chapter}.${problems.length}` : '',
    marks: counted(
      problems.reduce((sum, problem) => sum + marksOf(problem), 0),
      'mark',
    ),
    equals: equals(),
    problems: problemViews({ lesson, problems }, style, faults),
  });
  // Within the lesson's own section, so that its running head goes on.
  return html.replace(/<\/section>\s*$/, () => `${set}</section>\n`);
}
