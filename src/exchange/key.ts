import type { WorkingStep } from '../calculations/working.js';
import type { Part, Problem } from '../problems/problem.js';
import { Faults } from '../sheets/fault.js';
import type { LessonProblems, ProblemSheet, SheetStyle } from '../sheets/model.js';
import { type PortablePart, type PortableProblem, portableProblem } from '../sheets/portable.js';
import { plainStep } from '../sheets/portable-step.js';
import { letterOf, marksOf } from '../sheets/problem-marks.js';
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
export function keyOf(sheet: ProblemSheet, style: SheetStyle): Key {
  const { head, variant, version, learner, lessons } = sheet;
  const faults = new Faults();
  const key: Key = {
    format: 'benchleaf-key-1',
    release,
    ...head,
    units: style.units,
    variant,
    ...(version === undefined ? {} : { version }),
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
      const wordsOf = (one: Problem) => portableProblem(lesson, one, { style, place }, faults);
      return problemOf(problem, `${number ?? 1}.${at + 1}`, wordsOf);
    }),
  };
}

function problemOf(problem: Problem, number: string, wordsOf: (one: Problem) => PortableProblem): KeyProblem {
  const { ask, parts } = wordsOf(problem);
  const { example } = problem;
  return {
    name: problem.name,
    number,
    level: problem.level,
    question: ask.plain,
    marks: marksOf(problem),
    values: valuesGiven(problem),
    ...(example === undefined ? {} : { example: exampleOf(example, wordsOf(example)) }),
    parts: parts.map((asked, at) => partOf(problem.parts[at] as Part, letterOf(at, problem), asked)),
  };
}

function exampleOf(example: Problem, { ask, parts }: PortableProblem): NonNullable<KeyProblem['example']> {
  return {
    question: ask.plain,
    values: valuesGiven(example),
    parts: parts.map((asked, at) => workedOf(example.parts[at] as Part, letterOf(at, example), asked)),
  };
}

function workedOf({ answer, method }: Part, letter: string, { plain, options }: PortablePart) {
  return {
    letter,
    question: plain,
    options: options.map((one) => ({ letter: one.letter, text: one.plain })),
    answer,
    method: method.map(stepOf),
  };
}

function partOf(part: Part, letter: string, asked: PortablePart): KeyPart {
  const { unit, accepted, expects, marks, slips, checks, follows = [] } = part;
  const range = rangeOf(expects);
  return {
    ...workedOf(part, letter, asked),
    unit,
    accepted,
    ...(range === undefined ? {} : { range }),
    expects: expects as KeyPart['expects'],
    marks: [...marks],
    slips: slips.map(({ cut: _, ...slip }) => slip),
    follows: [...follows],
    checks: [...checks],
  };
}

function stepOf(step: WorkingStep): KeyPart['method'][number] {
  return 'say' in step ? step : { ...step, line: plainStep(step) };
}
