import { closeSync, constants, fstatSync, openSync, readSync, realpathSync } from 'node:fs';
import { dirname, sep } from 'node:path';
import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError, MachineError } from '../diagnostics/errors.js';

const COPY = 'Put the file itself there.';

/** Larger files than this are not opened; a real one has a few thousand bytes. */
const LARGEST = 1_000_000;

/**
 * The bytes of a file that somebody wrote.
 *
 * @param area what it is, in a word, for the rule of a message: `kit`, `lesson`, `course`, `learners`
 * @throws {CommandError} no such file; {ContentError} too large; {MachineError} it may not be read
 */
export function readBytes(file: string, area: string): Buffer {
  const opened = open(file);
  try {
    const bytes = Buffer.alloc(LARGEST + 1);
    let length = 0;
    // A file of the system may say that it is empty, and never end.
    for (let got = 1; got > 0 && length <= LARGEST; length += got)
      got = readSync(opened, bytes, length, bytes.length - length, null);
    if (length > LARGEST)
      throw wrong(file, `${area}/too-long`, 'the file is larger than 1 MB', 'Is this the right file?');
    return bytes.subarray(0, length);
  } catch (error) {
    throw error instanceof ContentError ? error : notRead(file, error);
  } finally {
    closeSync(opened);
  }
}

/** Opens a file, and nothing that only looks like one: a pipe or a device may never end, or do something. */
function open(file: string): number {
  const missing = new CommandError(`there is no file ${JSON.stringify(file)}`);
  if (file.includes('\0')) throw missing;
  let opened: number;
  try {
    opened = openSync(file, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0)); // a pipe does not wait for its writer
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    throw NOT_THERE.has(code) ? missing : notRead(file, error);
  }
  if (fstatSync(opened).isFile()) return opened;
  closeSync(opened);
  throw missing;
}

const NOT_THERE = new Set([
  'ENOENT',
  'ENOTDIR',
  'ENXIO',
  'ENODEV',
  'EISDIR',
  'ENAMETOOLONG',
  'ELOOP',
  'EINVAL',
]);

function notRead(file: string, error: unknown): MachineError {
  const { code = '', message } = error as NodeJS.ErrnoException;
  return new MachineError(
    `cannot read ${file}: ${['EACCES', 'EPERM'].includes(code) ? 'you may not read it' : message}`,
  );
}

/** Whether a file is a link that leads out of the folder in which it stands. */
export function leadsOut(file: string): boolean {
  try {
    return !realpathSync(file).startsWith(realpathSync(dirname(file)) + sep);
  } catch {
    return false; // it leads nowhere
  }
}

/**
 * The text of a file that somebody wrote. A lesson is a folder that is sent about, so its file may be no link to
 * somewhere else; kits, courses and lists that the user names may.
 *
 * @throws what `readBytes` throws; {ContentError} not UTF-8, or a lesson that is elsewhere
 */
export function readText(file: string, area: string): string {
  if (area === 'lesson' && leadsOut(file))
    throw wrong(file, `${area}/link`, 'this is a link that leads out of its folder', COPY);
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
