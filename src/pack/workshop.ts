import { ContentError } from '../diagnostics/diagnostic.js';
import { InputError } from '../diagnostics/errors.js';
import type { Kit } from '../kit/schema.js';
import type { SheetHead, SheetStyle } from '../sheets/model.js';
import type { Job } from './job.js';
import { shown } from './lessons.js';

/** What is made for the workshop rather than the class is made from this. */
export interface Workshop {
  readonly kit: Kit;
  readonly head: SheetHead;
  readonly style: SheetStyle;
  readonly jobs: readonly Job[];
  /** The course that the jobs stand in. */
  readonly file?: string | undefined;
  /** Of the making. */
  readonly date: Date;
}

/**
 * Works something from jobs; what a job is refused for is told with the course it stands in.
 *
 * @param refused what cannot be done, a message
 * @throws {ContentError} in place of an `InputError`
 */
export function fromJobs<T>(file: string | undefined, refused: string, hint: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const start = { line: 1, column: 1 };
    const message = `${refused}: ${error.message}`;
    throw new ContentError([
      { severity: 'error', rule: 'course/job', message, file: shown(file ?? ''), start, hints: [hint] },
    ]);
  }
}

/** A day as it is read, the same wherever it is made. */
export const dayOf = (date: Date): string => DAY.format(date);
const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
