import { readdirSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { readLesson } from '../lesson/source.js';
import { readText } from '../reading/text.js';
import { isFile, OWN_LESSONS } from './shelf.js';

/** A lesson as `benchleaf list lessons --json` shows it. */
export interface LessonEntry {
  readonly name: string;
  readonly title: string;
  readonly part: string;
  readonly level: number;
  readonly problems: readonly string[];
}

/**
 * The lessons that come with Benchleaf.
 *
 * @throws {ContentError} one that is faulty
 */
export function listLessons(): LessonEntry[] {
  return readdirSync(OWN_LESSONS)
    .sort()
    .map((name) => resolve(OWN_LESSONS, name, 'lesson.md'))
    .filter(isFile)
    .map((file) => {
      const { matter } = readLesson(readText(file, 'lesson'), file);
      const { title, part, level, problems } = matter;
      return { name: basename(dirname(file)), title, part, level, problems: Object.keys(problems) };
    });
}
