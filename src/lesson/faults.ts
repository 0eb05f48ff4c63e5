import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { InputError } from '../diagnostics/errors.js';
import { NoValueError } from '../formula/formula.js';
import { Fault } from '../problems/fault.js';
import type { Path } from '../reading/places.js';
import type { LessonSource } from './source.js';

/** Whatever stops a working, as a fault; anything else is a bug, or two routes that differ, and goes on up. */
export function asFault(error: unknown): Fault {
  if (error instanceof Fault) return error;
  if (error instanceof InputError || error instanceof NoValueError) return new Fault(error.message, []);
  throw error;
}

/** What stopped a working, at its place in the lesson's front matter. */
export function inMatter(error: unknown, path: Path, { file, places }: LessonSource): Diagnostic {
  const fault = asFault(error);
  return {
    severity: 'error',
    rule: `lesson/${fault.rule}`,
    message: fault.message,
    file,
    ...places.within([...path, ...fault.path], fault.piece),
    hints: fault.hints,
  };
}

/** Does a piece of work on a lesson; what stops it is told at its place. @throws {ContentError} */
export function located<T>(path: Path, source: LessonSource, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw new ContentError([inMatter(error, path, source)], new Map([[source.file, source.text]]));
  }
}
