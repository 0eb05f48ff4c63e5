import type { WorkingStep } from '../calculations/working.js';
import type { Part, Problem } from '../problems/problem.js';
import { Faults } from '../sheets/fault.js';
import type { LessonProblems, ProblemSheet, SheetStyle } from '../sheets/model.js';
import { type PortablePart, type PortableProblem, portableProblem } from '../sheets/portable.js';
import { plainStep } from '../sheets/portable-step.js';
import { letterOf, marksOf } from '../sheets/problem-view.js';
import type { Key } from './key-schema.js';
import { rangeOf } from './range.js';
import { release } from './release.js';
import { valuesGiven } from './values-given.js';

type KeyLesson = Key['lessons'][number];
type KeyProblem = KeyLesson['problems'][number];
type KeyPart = KeyProblem['parts'][number];

/**
 * All that the answer key of a sheet says, as data.
 *
 * @throws {ContentError} for a problem whose words cannot be set
 */
export function keyOf({ head, variant, learner, lessons }: ProblemSheet, style: SheetStyle): Key {
  const faults = new Faults();
  const key: Key = {
    format: 'benchleaf-key-1',
    release,
    ...head,
    units: style.units,
    variant,
    ...(learner === undefined ? {} : { learner }),
    lessons: lessons.map((one) => lessonOf(one, style, faults)),
  };
  faults.demandNone();
  return key;
}

/** The same as the text of a file. */
export function keyJson(sheet: ProblemSheet, style: SheetStyle): string {
  return `${JSON.stringify(keyOf(sheet, style), null, 2)}\n`;
}

function lessonOf({ lesson, problems }: LessonProblems, style: SheetStyle, faults: Faults): KeyLesson {
  const { name, number, title } = lesson;
  return {
    name,
    ...(number === undefined ? {} : { number }),
    title,
    problems: problems.map((problem, at) => {
      const place = { folder: '', name: problem.name };
      const words = portableProblem(lesson, problem, { style, place }, faults);
      return problemOf(problem, `${number ?? 1}.${at + 1}`, words);
    }),
  };
}

function problemOf(problem: Problem, number: string, { ask, parts }: PortableProblem): KeyProblem {
  return {
    name: problem.name,
    number,
    level: problem.level,
    question: ask.plain,
    marks: marksOf(problem),
    values: valuesGiven(problem),
    parts: parts.map((asked, at) => partOf(problem.parts[at] as Part, letterOf(at, problem), asked)),
  };
}

function partOf(part: Part, letter: string, { plain, options }: PortablePart): KeyPart {
  const { unit, answer, accepted, expects, marks, method, slips, checks, follows = [] } = part;
  const range = rangeOf(expects);
  return {
    letter,
    question: plain,
    options: options.map((one) => ({ letter: one.letter, text: one.plain })),
    unit,
    answer,
    accepted,
    ...(range === undefined ? {} : { range }),
    expects: expects as KeyPart['expects'],
    marks: [...marks],
    method: method.map(stepOf),
    slips: [...slips],
    follows: [...follows],
    checks: [...checks],
  };
}

function stepOf(step: WorkingStep): KeyPart['method'][number] {
  return 'say' in step ? step : { ...step, line: plainStep(step) };
}
