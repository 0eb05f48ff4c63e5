import { readFileSync, statSync } from 'node:fs';
import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError, MachineError } from '../diagnostics/errors.js';

/** Larger files than this are not opened; a real one has a few thousand bytes. */
const LARGEST = 1_000_000;

/**
 * The bytes of a file that somebody wrote.
 *
 * @param area what it is, in a word, for the rule of a message: `kit`, `lesson`, `course`, `learners`
 * @throws {CommandError} no such file; {ContentError} too large; {MachineError} it may not be read
 */
export function readBytes(file: string, area: string): Buffer {
  const about = statSync(file, { throwIfNoEntry: false });
  if (!about?.isFile()) throw new CommandError(`there is no file ${JSON.stringify(file)}`);
  if (about.size > LARGEST)
    throw wrong(file, `${area}/too-long`, 'the file is larger than 1 MB', 'Is this the right file?');
  try {
    return readFileSync(file);
  } catch (error) {
    throw new MachineError(`cannot read ${file}: ${(error as Error).message}`);
  }
}

/**
 * The text of a file that somebody wrote.
 *
 * @throws what `readBytes` throws; {ContentError} not UTF-8
 */
export function readText(file: string, area: string): string {
  const bytes = readBytes(file, area);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw wrong(file, `${area}/encoding`, 'the file is not UTF-8 text', 'Save it again as UTF-8.');
  }
}

function wrong(file: string, rule: string, message: string, hint: string): ContentError {
  return new ContentError([
    { severity: 'error', rule, message, file, start: { line: 1, column: 1 }, hints: [hint] },
  ]);
}
