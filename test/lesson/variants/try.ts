import type { Kit } from '../../../src/kit/schema.js';
import { problemsOf } from '../../../src/lesson/class-set.js';
import { prepareLesson } from '../../../src/lesson/prepare.js';
import type { LessonSource } from '../../../src/lesson/source.js';
import type { Part } from '../../../src/problems/problem.js';
import { type Judged, misjudged } from '../../problems/writing/judging.js';
import { misprinted } from './printed.js';

/** What came of many variants of a lesson. */
export interface Tried {
  /** The first fault of each problem. */
  readonly faults: ReadonlyMap<string, string>;
  /** The different answers of each problem. */
  readonly answers: ReadonlyMap<string, ReadonlySet<string>>;
  readonly judged: Judged;
}

/**
 * Draws variants of each problem of a lesson for a workshop, half of them on sheets in the other units, and looks at
 * each part as it is printed and as it is judged.
 */
export function tryVariants(source: LessonSource, kit: Kit, variants: number): Tried {
  const faults = new Map<string, string>();
  const answers = new Map<string, Set<string>>();
  const judged: Judged = { right: 0, slips: 0, outside: 0 };
  const seen = new Set<string>();
  /** Many parts are judged alike, and one of them tells of all. */
  const faultOf = (part: Part): string | undefined => {
    const printed = misprinted(part);
    const alike = JSON.stringify([part.answer, part.accepted, part.expects, part.slips]);
    if (printed || seen.has(alike)) return printed;
    seen.add(alike);
    return misjudged(part, judged);
  };
  for (const units of ['mm', 'inch'] as const) {
    const setting = { kit, units };
    const prepared = prepareLesson(source, setting);
    for (let variant = 0; variant < variants / 2; variant++)
      for (const { name, parts } of problemsOf(prepared, `${kit.kit}/${variant}`, setting))
        for (const part of parts) {
          answers.set(name, (answers.get(name) ?? new Set()).add(part.answer));
          const fault = faults.has(name) ? undefined : faultOf(part);
          if (fault)
            faults.set(name, `variant ${variant}, ${units}: ${fault}: ${JSON.stringify(part, null, 1)}`);
        }
  }
  return { faults, answers, judged };
}
