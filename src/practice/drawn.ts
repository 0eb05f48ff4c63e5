import { drawKinds } from '../lesson/class-set.js';
import { keyOf } from '../problems/kind.js';
import type { Problem } from '../problems/problem.js';
import type { PracticeLesson } from './practice-lesson.js';
import { type Progress, sheetOf } from './progress.js';

/**
 * The problems of a page, those with numbers of their own among them: the same as a printed sheet has for the code.
 *
 * @throws {Fault} a kind that has no fair values within its ranges
 */
export function drawnFor(lesson: PracticeLesson, progress: Progress): Problem[] {
  const { kit } = lesson;
  const { code, units } = progress;
  const drawn = drawKinds(lesson, code, { kit, units });
  return lesson.problems.map(({ name }, at) =>
    sheetOf(progress, name).code === code && drawn[at] ? drawn[at] : drawnAlone(lesson, progress, name),
  );
}

/** One of them. Others of its kind are drawn with it, for it may not have their numbers. */
export function drawnAlone(lesson: PracticeLesson, progress: Progress, name: string): Problem {
  const { kit } = lesson;
  const { units } = progress;
  const { code } = sheetOf(progress, name);
  const problems = lesson.problems.filter((kind) => keyOf(kind) === keyOf({ name }));
  const problem = drawKinds({ name: lesson.name, problems }, code, { kit, units }).find(
    (one) => one.name === name,
  );
  if (!problem) throw new Error(`the lesson ${lesson.name} has no problem ${name}`);
  return problem;
}
