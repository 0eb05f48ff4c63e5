import { readFileSync, statSync } from 'node:fs';
import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError } from '../diagnostics/errors.js';
import { readKit } from './read.js';
import type { Kit } from './schema.js';

/** Larger files than this are not opened. */
const LARGEST = 1_000_000;

/**
 * The text of a kit file.
 *
 * @throws {CommandError} no such file; {ContentError} too large, or not UTF-8
 */
export function kitText(file: string): string {
  const wrong = (rule: string, message: string, hint: string) =>
    new ContentError([
      { severity: 'error', rule, message, file, start: { line: 1, column: 1 }, hints: [hint] },
    ]);
  const about = statSync(file, { throwIfNoEntry: false });
  if (!about?.isFile()) throw new CommandError(`there is no file ${JSON.stringify(file)}`);
  if (about.size > LARGEST)
    throw wrong('kit/too-long', 'the file is too large for a kit', 'Is this the right file?');
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file));
  } catch {
    throw wrong('kit/encoding', 'the file is not UTF-8 text', 'Save it again as UTF-8.');
  }
}

/** Reads and checks the kit in a file. */
export function openKit(file: string): Kit {
  return readKit(kitText(file), file);
}
