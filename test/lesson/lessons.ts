import { readdirSync, readFileSync } from 'node:fs';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { type LessonSource, readLesson } from '../../src/lesson/source.js';

/** The two workshops of the course. */
export const kits = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [Kit, Kit];

/** All lessons of the course. */
export const lessons = readdirSync('lessons').filter((name) => /^\d\d-/.test(name));

export function sourceOf(lesson: string): LessonSource {
  const file = `lessons/${lesson}/lesson.md`;
  return readLesson(readFileSync(file, 'utf8'), file);
}
