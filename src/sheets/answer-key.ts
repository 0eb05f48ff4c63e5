import type { Part } from '../problems/problem.js';
import { counted } from '../units/words.js';
import { checkViews } from './check-view.js';
import { Faults } from './fault.js';
import { demandGlyphs } from './glyphs.js';
import type { LessonProblems, ProblemSheet, SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { partOf } from './part.js';
import { whose } from './problem-sheet.js';
import { letterOf, marksOf, noteProblemGlyphs } from './problem-view.js';
import { render } from './templates.js';
import { equals, stepView } from './working-view.js';

/**
 * The key to one learner's problems: method, answer, what is accepted, marks, slips, and the check.
 *
 * @throws {ContentError} for characters in a problem that cannot be printed; {InputError} for one in a name
 */
export function answerKeyHtml(sheet: ProblemSheet, style: SheetStyle): string {
  demandGlyphs([sheet.head, sheet.variant, sheet.learner]);
  const { head } = sheet;
  const faults = new Faults();
  const body = sheet.lessons.map((one) => lessonHtml(one, sheet, faults));
  faults.demandNone();
  return pageHtml({
    kind: 'key',
    title: `${head.course}: answer key, ${sheet.variant}`,
    style,
    head,
    foot: `KEY · ${whose(sheet)}`,
    parts: sheet.lessons.map(({ lesson }) => partOf(lesson)),
    body: body.join('\n'),
  });
}

function lessonHtml(
  { lesson, problems }: LessonProblems,
  { variant, learner = '' }: ProblemSheet,
  faults: Faults,
): string {
  for (const problem of problems) noteProblemGlyphs(lesson, problem, faults);
  const marks = problems.reduce((sum, problem) => sum + marksOf(problem), 0);
  return render('answer-key', {
    page: partOf(lesson).page,
    number: lesson.number,
    title: lesson.title,
    variant,
    learner,
    equals: equals(),
    marks: counted(marks, 'mark'),
    problems: problems.map((problem, place) => ({
      number: `${lesson.number ?? 1}.${place + 1}`,
      parts: problem.parts.map((part, at) => partView(part, letterOf(at, problem))),
    })),
  });
}

function partView({ answer, accepted, method, marks, slips, checks }: Part, letter: string) {
  return {
    letter,
    answer,
    accepted,
    marks,
    slips,
    checks: checkViews(checks),
    steps: method.map((step) => stepView(step)),
  };
}
