import { relative } from 'node:path';
import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { type PreparedLesson, prepareLesson } from '../lesson/prepare.js';
import { readLesson } from '../lesson/source.js';
import type { Setting } from '../problems/draw.js';
import { readText } from '../reading/text.js';
import { WorkedLessons } from './worked-lessons.js';

/** Gathers what is wrong in several files, so that all of it is told at once. */
export class Gathering {
  readonly #faults: Diagnostic[] = [];
  readonly #sources = new Map<string, string>();

  /** Does a piece of work; content that is wrong is kept for later. */
  attempt<T>(work: () => T): T | undefined {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof ContentError)) throw error;
      this.#faults.push(...error.diagnostics);
      for (const [file, text] of error.sources) this.#sources.set(file, text);
      return undefined;
    }
  }

  /** Whether nothing was wrong up to now. */
  get clean(): boolean {
    return this.#faults.length === 0;
  }

  /** @throws {ContentError} with all that was wrong, if anything was */
  demandNone(): void {
    if (this.#faults.length > 0) throw new ContentError(this.#faults, this.#sources);
  }
}

/**
 * Reads lessons and works their numbers for a kit; what is wrong in any goes to the gathering.
 *
 * @param worked what was worked before, and need not be again
 * @throws {CommandError} a file that is not there; {DisagreementError} two routes that differ
 */
export function openLessons(
  files: readonly string[],
  setting: Setting,
  gathering: Gathering,
  worked = new WorkedLessons(),
): PreparedLesson[] {
  return files.flatMap((path) => {
    const file = shown(path);
    const lesson = gathering.attempt(() => {
      const text = readText(path, 'lesson');
      return worked.lesson(path, text, setting, () =>
        withText(file, text, () => prepareLesson(readLesson(text, file), setting)),
      );
    });
    return lesson ? [lesson] : [];
  });
}

/** A message shows the line at fault. */
function withText<T>(file: string, text: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    throw new ContentError(error.diagnostics, new Map([[file, text], ...error.sources]));
  }
}

/** A path as the user would type it. */
export function shown(path: string): string {
  const short = relative(process.cwd(), path);
  return short.startsWith('..') || short === '' ? path : short;
}
