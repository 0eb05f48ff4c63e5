import type { Kit } from '../../src/kit/schema.js';
import { type PreparedLesson, prepareLesson } from '../../src/lesson/prepare.js';
import { type PracticeLesson, practiceLesson } from '../../src/practice/practice-lesson.js';
import type { UnitSystem } from '../../src/units/format.js';
import { kits, sourceOf } from '../lesson/lessons.js';

export { kits, lessons as lessonNames } from '../lesson/lessons.js';

/** A lesson worked for a kit. */
export function prepared(name: string, kit: Kit, units: UnitSystem = kit.units): PreparedLesson {
  return prepareLesson(sourceOf(name), { kit, units });
}

/** The page of a lesson, as data. */
export function practiceOf(name: string, kit = kits[0]): PracticeLesson {
  return practiceLesson(prepared(name, kit).lesson, {
    head: { course: 'The Larkfield timepiece', club: 'Harrow Lane Model Engineers', kit: kit.kit },
    course: 'larkfield',
    kit,
    units: kit.units,
    code: '8FJ-1B1-4',
  });
}
