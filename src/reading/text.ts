import { readFileSync, statSync } from 'node:fs';
import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError } from '../diagnostics/errors.js';

/** Larger files than this are not opened. */
const LARGEST = 1_000_000;

/**
 * The text of a file that somebody wrote.
 *
 * @param area what it is, in a word, for the rule of a message: `kit`, `lesson`, `course`
 * @throws {CommandError} no such file; {ContentError} too large, or not UTF-8
 */
export function readText(file: string, area: string): string {
  const wrong = (rule: string, message: string, hint: string) =>
    new ContentError([
      {
        severity: 'error',
        rule: `${area}/${rule}`,
        message,
        file,
        start: { line: 1, column: 1 },
        hints: [hint],
      },
    ]);
  const about = statSync(file, { throwIfNoEntry: false });
  if (!about?.isFile()) throw new CommandError(`there is no file ${JSON.stringify(file)}`);
  if (about.size > LARGEST)
    throw wrong('too-long', `the file is too large for a ${area}`, 'Is this the right file?');
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file));
  } catch {
    throw wrong('encoding', 'the file is not UTF-8 text', 'Save it again as UTF-8.');
  }
}
