import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { located } from '../lesson/faults.js';
import type { PreparedLesson } from '../lesson/prepare.js';
import { countProblems } from '../problems/different.js';
import type { Setting } from '../problems/draw.js';
import { keyOf } from '../problems/kind.js';

/** A class has about so many learners, who should not share a problem. */
const CLASS = 30;

/** How many different problems a kind can give. */
export interface Different {
  readonly problem: string;
  readonly count: number;
  /** Whether there are more than were counted. */
  readonly more: boolean;
}

/**
 * How many different problems each kind of a lesson can give with a kit; no more than a class wants is counted where
 * there are many.
 *
 * @throws {ContentError} a declaration that cannot be worked
 */
export function differentProblems({ lesson, source }: PreparedLesson, setting: Setting): Different[] {
  return lesson.problems
    .filter((kind) => kind.name === keyOf(kind))
    .map((kind) => ({
      problem: kind.name,
      ...located(['problems', kind.name], source, () => countProblems(kind, setting, CLASS)),
    }));
}

/** A warning for each kind that has too few for a class. */
export function tooFew({ source }: PreparedLesson, different: readonly Different[]): Diagnostic[] {
  return different
    .filter(({ count }) => count < CLASS)
    .map(({ problem, count }) => ({
      severity: 'warning',
      rule: 'lesson/few-problems',
      message: `${problem} gives ${count} different problems with this kit, and a class may want ${CLASS}`,
      file: source.file,
      ...source.places.value(['problems', problem, 'vary']),
      hints: ['Widen a range of vary, or loosen keep.'],
    }));
}
