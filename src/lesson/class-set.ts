import { hash32 } from '../problems/chance.js';
import { codeFor } from '../problems/code.js';
import { drawProblem, type Setting } from '../problems/draw.js';
import type { Side } from '../problems/part.js';
import type { Problem } from '../problems/problem.js';
import { located } from './faults.js';
import type { PreparedLesson } from './prepare.js';

/**
 * The problems of a lesson for one variant.
 *
 * @throws {ContentError} a kind that has no fair values within its ranges
 */
export function problemsOf(prepared: PreparedLesson, code: string, setting: Setting): Problem[] {
  const { lesson, source } = prepared;
  return lesson.problems.map((kind) =>
    located(['problems', kind.name], source, () =>
      drawProblem(kind, `${code}/${lesson.name}`, setting, sideOf(code)),
    ),
  );
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
