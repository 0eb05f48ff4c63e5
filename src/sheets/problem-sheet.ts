import { counted } from '../units/words.js';
import { Faults } from './fault.js';
import { demandGlyphs } from './glyphs.js';
import type { LessonProblems, ProblemSheet, SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { partOf } from './part.js';
import { askedOf, LEVELS, letterOf, marksIn, marksOf } from './problem-view.js';
import { render } from './templates.js';

/**
 * One learner's problems, with room to work them.
 *
 * @throws {ContentError} with every fault of every problem's text
 */
export function problemSheetHtml(sheet: ProblemSheet, style: SheetStyle): string {
  demandGlyphs([sheet.head, sheet.variant, sheet.learner]);
  const faults = new Faults();
  const body = sheet.lessons.map((one) => lessonHtml(one, sheet, style, faults));
  faults.demandNone();
  const { head } = sheet;
  return pageHtml({
    kind: 'problems',
    title: `${head.course}: problems, ${sheet.variant}`,
    style,
    head,
    foot: whose(sheet),
    parts: sheet.lessons.map(({ lesson }) => partOf(lesson)),
    body: body.join('\n'),
  });
}

/** `Variant K7Q2 · Ada Smith` */
export function whose({ variant, learner }: ProblemSheet): string {
  return [`Variant ${variant}`, learner].filter(Boolean).join(' · ');
}

function lessonHtml(
  { lesson, problems }: LessonProblems,
  { variant, learner = '' }: ProblemSheet,
  style: SheetStyle,
  faults: Faults,
): string {
  const marks = problems.reduce((sum, problem) => sum + marksOf(problem), 0);
  return render('problem-sheet', {
    page: partOf(lesson).page,
    number: lesson.number,
    title: lesson.title,
    variant,
    learner,
    marks: counted(marks, 'mark'),
    problems: problems.map((problem, place) => {
      const { ask, parts } = askedOf(lesson, problem, style, faults);
      return {
        number: `${lesson.number ?? 1}.${place + 1}`,
        level: LEVELS[problem.level],
        many: parts.length > 1,
        marks: counted(marksOf(problem), 'mark'),
        ask,
        parts: parts.map(({ part, asked }, at) => ({
          letter: letterOf(at, problem),
          asked,
          marks: counted(marksIn(part.marks), 'mark'),
          unit: part.unit,
          room: part.room,
        })),
      };
    }),
  });
}
