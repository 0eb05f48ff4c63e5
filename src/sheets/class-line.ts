import type { ClassLine, ClassProblem } from './class-model.js';
import { markCount } from './mark-count.js';
import type { LessonProblems, ProblemSheet } from './model.js';
import { letterOf } from './problem-marks.js';
import { shortAnswer } from './short-answer.js';

/** What is looked at of one sheet while the class is marked. */
export function classLine(
  { variant, lessons }: ProblemSheet,
  who: Pick<ClassLine, 'seat' | 'learner' | 'version'>,
): ClassLine {
  return { ...who, variant, lessons: lessons.map(problemsOf) };
}

function problemsOf({ lesson, problems }: LessonProblems): ClassProblem[] {
  return problems.map((problem, place) => ({
    number: `${lesson.number ?? 1}.${place + 1}`,
    marks: markCount(problem),
    parts: problem.parts.map((part, at) => ({ letter: letterOf(at, problem), ...shortAnswer(part) })),
  }));
}
