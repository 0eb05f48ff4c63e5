import { hash32 } from '../problems/chance.js';
import { codeFor } from '../problems/code.js';
import { drawProblem, type Setting } from '../problems/draw.js';
import { keyOf } from '../problems/kind.js';
import type { Problem } from '../problems/problem.js';
import type { Side } from '../problems/unfair.js';
import { located } from './faults.js';
import type { Lesson } from './lesson.js';
import type { PreparedLesson } from './prepare.js';

/**
 * The problems of a lesson for one variant. One that is asked several times has other numbers each time, and so has
 * the example before it.
 *
 * @throws {ContentError} a kind that has no fair values within its ranges
 */
export function problemsOf({ lesson, source }: PreparedLesson, code: string, setting: Setting): Problem[] {
  return drawKinds(lesson, code, setting, (key, work) => located(['problems', key], source, work));
}

/**
 * The same for a lesson whose text is not at hand.
 *
 * @param lesson its name, and all its kinds of problem or all those with one key
 * @param around does the work on the kinds with a key; it may tell where a fault of it stands
 * @throws {Fault} a kind that has no fair values within its ranges
 */
export function drawKinds(
  lesson: Pick<Lesson, 'name' | 'problems'>,
  code: string,
  setting: Setting,
  around: (key: string, work: () => Problem) => Problem = (_, work) => work(),
): Problem[] {
  const half = sideOf(code);
  const drawn: Problem[] = [];
  for (const kind of lesson.problems) {
    const key = keyOf(kind);
    const seed = `${code}/${lesson.name}`;
    const before = drawn
      .filter((one) => keyOf(one) === key)
      .flatMap((one) => [one, ...(one.example ? [one.example] : [])]);
    const one = around(key, () => {
      const asked = drawProblem(kind, seed, setting, { half, unlike: before });
      if (kind.fade !== 'worked') return asked;
      const example = drawProblem(kind, `${seed}/example`, setting, { half, unlike: [...before, asked] });
      return { ...asked, example };
    });
    drawn.push(one);
  }
  return drawn;
}

/** The variant code of a class that was given none: the same for the same course. */
export function standingCode(course: string): string {
  return codeFor(`course/${course}`);
}

/**
 * A variant code for each learner of a class, in the order they sit: the same for the same class code and names.
 * Neighbours are on different sides, so that no problem has the same answer for both, unless it is one in words or
 * has too few answers.
 *
 * @param names may repeat
 */
export function learnerCodes(classCode: string, names: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return names.map((name, place) => {
    const time = (seen.get(name) ?? 0) + 1;
    seen.set(name, time);
    for (let attempt = 0; ; attempt++) {
      const code = codeFor(`${classCode}/${name}/${time}/${attempt}`);
      if (sideOf(code) === place % 2) return code;
    }
  });
}

/** The half of the answers that a variant draws from; it follows from the code alone. */
function sideOf(code: string): Side {
  return hash32(code) % 2 === 0 ? 0 : 1;
}
