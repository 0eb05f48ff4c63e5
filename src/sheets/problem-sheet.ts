import type { Lesson } from '../lesson/lesson.js';
import type { Problem } from '../problems/problem.js';
import { counted } from '../units/words.js';
import { isolated } from './css-string.js';
import { Faults } from './fault.js';
import { demandGlyphs } from './glyphs.js';
import type { LessonProblems, ProblemSheet, SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { partOf } from './part.js';
import { LEVELS, letterOf, marksIn, marksOf } from './problem-marks.js';
import { askedOf, noteProblemGlyphs } from './problem-view.js';
import { shownView } from './shown-view.js';
import { render } from './templates.js';
import { equals, stepView } from './working-view.js';

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
    code: sheet.variant,
    parts: sheet.lessons.map(({ lesson }) => partOf(lesson)),
    body: body.join('\n'),
  });
}

/** `Variant K7Q2 · Ada Smith`, `Version A · Variant K7Q2` */
export function whose({ version, variant, learner }: ProblemSheet): string {
  const name = learner && isolated(learner);
  return [version && `Version ${version}`, `Variant ${variant}`, name].filter(Boolean).join(' · ');
}

function lessonHtml(
  { lesson, problems }: LessonProblems,
  { variant, version = '', learner = '' }: ProblemSheet,
  style: SheetStyle,
  faults: Faults,
): string {
  const marks = problems.reduce((sum, problem) => sum + marksOf(problem), 0);
  return render('problem-sheet', {
    page: partOf(lesson).page,
    number: lesson.number,
    title: lesson.title,
    variant,
    version,
    learner,
    equals: equals(),
    marks: counted(marks, 'mark'),
    problems: problemViews({ lesson, problems }, style, faults),
  });
}

/** The problems of a lesson, as the template `problem-list` wants them. */
export function problemViews({ lesson, problems }: LessonProblems, style: SheetStyle, faults: Faults) {
  return problems.map((problem, place) => {
    const { ask, parts } = askedOf(lesson, problem, style, faults);
    return {
      example: problem.example && exampleView(lesson, problem.example, style, faults),
      shown: problem.shown && shownView(problem.shown),
      number: `${lesson.number ?? 1}.${place + 1}`,
      level: LEVELS[problem.level],
      many: parts.length > 1,
      marks: counted(marksOf(problem), 'mark'),
      ask,
      parts: parts.map(({ part, asked, options }, at) => ({
        letter: letterOf(at, problem),
        asked,
        options,
        short: (part.options ?? []).every(({ text }) => text.length <= SHORT),
        shown: part.shown && shownView(part.shown),
        marks: counted(marksIn(part.marks), 'mark'),
        unit: part.unit,
        wide: WORDY.has(part.expects.kind),
        room: part.room,
      })),
    };
  });
}

/** Answers that take a line of words: `15 spaces on the 21-hole circle`. */
const WORDY: ReadonlySet<string> = new Set(['moves', 'numbers', 'set']);

/** Options no longer than this stand beside one another. */
const SHORT = 14;

/** The same problem with other numbers, and how it is worked. */
function exampleView(lesson: Lesson, example: Problem, style: SheetStyle, faults: Faults) {
  noteProblemGlyphs(lesson, example, faults);
  const { ask, parts } = askedOf(lesson, example, style, faults);
  return {
    ask,
    parts: parts.map(({ part, asked }) => ({
      asked,
      steps: part.method.map((step) => stepView(step)),
      answer: part.answer,
    })),
  };
}
