import { readdirSync, readFileSync } from 'node:fs';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { type PreparedLesson, prepareLesson } from '../../src/lesson/prepare.js';
import { readLesson } from '../../src/lesson/source.js';
import type { PracticeLesson } from '../../src/practice/practice-lesson.js';
import type { UnitSystem } from '../../src/units/format.js';

const [harrowLane, millYard] = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [
  Kit,
  Kit,
];
export const kits: readonly Kit[] = [harrowLane, millYard];

/** Every lesson that has a folder. */
export const lessonNames = readdirSync('lessons').filter((name) => /^\d\d-/.test(name));

/** A lesson worked for a kit. */
export function prepared(name: string, kit: Kit, units: UnitSystem = kit.units): PreparedLesson {
  const file = `lessons/${name}/lesson.md`;
  return prepareLesson(readLesson(readFileSync(file, 'utf8'), file), { kit, units });
}

/** The page of a lesson, as data. */
export function practiceOf(name: string, kit = harrowLane): PracticeLesson {
  const { title, number, goals, cautions, problems } = prepared(name, kit).lesson;
  return {
    name,
    number,
    title,
    goals,
    cautions,
    problems,
    head: { course: 'The Larkfield timepiece', club: 'Harrow Lane Model Engineers', kit: kit.kit },
    course: 'larkfield',
    kit,
    units: kit.units,
    code: '8FJ-1B1-4',
  };
}
