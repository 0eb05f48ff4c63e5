import { readFileSync, statSync } from 'node:fs';
import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
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
function kitText(file: string): string {
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

/**
 * Reads and checks several kits, all of them before anything is said.
 *
 * @throws {ContentError} with every fault of every kit; {CommandError} when a file is not there
 */
export function openKits(files: readonly string[]): Kit[] {
  const sources = new Map<string, string>();
  const faults: Diagnostic[] = [];
  const kits: Kit[] = [];
  for (const file of files) {
    try {
      const text = kitText(file);
      sources.set(file, text);
      kits.push(readKit(text, file));
    } catch (error) {
      if (!(error instanceof ContentError)) throw error;
      faults.push(...error.diagnostics);
    }
  }
  if (faults.length > 0) throw new ContentError(faults, sources);
  return kits;
}
