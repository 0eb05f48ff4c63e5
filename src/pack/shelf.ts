import { readdirSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nearest } from '../diagnostics/suggest.js';

/** The lessons that come with Benchleaf. */
export const OWN_LESSONS = fileURLToPath(new URL('../../lessons', import.meta.url));

/** What a lesson's folder holds. */
const LESSON = 'lesson.md';

/**
 * The file of a lesson named by its folder: a path, or a bare name.
 *
 * @param folders where to look, the first first
 * @returns absolute path, or undefined when there is none
 */
export function lessonFile(folder: string, folders: readonly string[]): string | undefined {
  return folders.map((base) => resolve(base, folder, LESSON)).find(isFile);
}

/** What a lesson that is not there may have meant, as a hint. */
export function lessonHint(folder: string, folders: readonly string[]): string {
  const path = dirname(folder);
  return hint(
    folder,
    folders.flatMap((base) =>
      namesIn(resolve(base, path))
        .filter((name) => isFile(resolve(base, path, name, LESSON)))
        .map((name) => join(path, name)),
    ),
    'lesson',
  );
}

/** What a kit that is not there may have meant, as a hint. */
export function kitHint(file: string, folder: string): string {
  const path = dirname(file);
  const there = namesIn(resolve(folder, path)).filter((name) => /\.ya?ml$/.test(name));
  return hint(
    file,
    there.map((name) => join(path, name)),
    'kit',
  );
}

function hint(typed: string, there: readonly string[], what: string): string {
  const names = new Map(there.map((one) => [basename(one), one]));
  const near = names.get(nearest(basename(typed), names.keys()) ?? '');
  if (near) return `Did you mean ${JSON.stringify(near)}?`;
  if (there.length === 0) return `Write the path of the ${what} from the folder of the course.`;
  return `Choose from ${[...there].sort().slice(0, 12).join(', ')}.`;
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

export function isFile(path: string): boolean {
  try {
    return statSync(path).isFile();
  } catch {
    return false; // not there, or something on the way to it is no folder
  }
}
