import { lettersOf } from '../problems/expected.js';
import type { Part, Problem } from '../problems/problem.js';
import { counted } from '../units/words.js';
import { checkViews } from './check-view.js';
import { Faults } from './fault.js';
import { demandGlyphs } from './glyphs.js';
import { inLine } from './in-line.js';
import type { LessonProblems, ProblemSheet, SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { partOf } from './part.js';
import { letterOf, marksOf } from './problem-marks.js';
import { whose } from './problem-sheet.js';
import { noteProblemGlyphs, setterOf } from './problem-view.js';
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
  const body = sheet.lessons.map((one) => lessonHtml(one, sheet, style, faults));
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
  { variant, version = '', learner = '' }: ProblemSheet,
  style: SheetStyle,
  faults: Faults,
): string {
  for (const problem of problems) noteProblemGlyphs(lesson, problem, faults);
  const marks = problems.reduce((sum, problem) => sum + marksOf(problem), 0);
  return render('answer-key', {
    page: partOf(lesson).page,
    number: lesson.number,
    title: lesson.title,
    variant,
    version,
    learner,
    equals: equals(),
    marks: counted(marks, 'mark'),
    problems: problems.map((problem, place) => ({
      number: `${lesson.number ?? 1}.${place + 1}`,
      parts: problem.parts.map((part, at) => ({
        ...partView(part, setterOf(lesson, problem, style, faults)),
        letter: letterOf(at, problem),
        follows: followsView(part, problem),
      })),
    })),
  });
}

/** What follows from slips, gathered by the part that they were made in. */
function followsView({ follows = [] }: Part, problem: Problem) {
  return problem.parts
    .map((_, at) => ({ letter: letterOf(at, problem), lines: follows.filter(({ part }) => part === at) }))
    .filter(({ lines }) => lines.length > 0);
}

function partView(
  { answer, accepted, expects, method, marks, slips, checks, options = [] }: Part,
  set: (text: string) => string,
) {
  const textOf = (letter: string): string =>
    inLine(set(options.find((one) => one.letter === letter)?.text ?? ''));
  return {
    answer,
    accepted: options.length > 0 ? '' : accepted,
    chosen: lettersOf(expects).map(textOf).join(', '),
    marks,
    slips: slips.map(({ gives, says }) => {
      const option = textOf(gives);
      return { gives, says, option, wordy: gives.length + option.length > WORDY };
    }),
    checks: checkViews(checks),
    steps: method.map((step) => stepView(step)),
  };
}

/** Letters of a wrong answer that is told in words. */
const WORDY = 20;
