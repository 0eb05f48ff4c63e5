import { ContentError } from '../diagnostics/diagnostic.js';
import { readBytes } from '../reading/text.js';

/**
 * The text of a list that a spreadsheet or an editor wrote: UTF-8, or UTF-16 with its mark. Lines end in `\n`.
 *
 * @throws {CommandError} no such file; {MachineError} it may not be read;
 *   {ContentError} too large, or something else than text, with the place of the first strange character
 */
export function readListText(file: string, area: string): string {
  const bytes = readBytes(file, area);
  const text = new TextDecoder(encodingOf(bytes)).decode(bytes).replace(/\r\n?/g, '\n');
  // What cannot be decoded comes out as U+FFFD, in its place.
  const at = text.search(/[\0\uFFFD]/);
  if (at < 0) return text;
  const before = text.slice(0, at).split('\n');
  const start = { line: before.length, column: (before.at(-1) ?? '').length + 1 };
  const message = 'the file is not UTF-8 text from this character on';
  const hints = ['In your spreadsheet choose "CSV UTF-8" when you save the list.'];
  throw new ContentError(
    [{ severity: 'error', rule: `${area}/encoding`, message, file, start, hints }],
    shownAs(file, text),
  );
}

/** The text as it may be shown on a terminal: a control character could do anything there. */
export function shownAs(file: string, text: string): Map<string, string> {
  return new Map([[file, text.replace(/[^\P{Cc}\n\t]/gu, '\uFFFD')]]);
}

function encodingOf(bytes: Buffer): string {
  const mark = bytes.subarray(0, 2).toString('hex');
  return mark === 'fffe' ? 'utf-16le' : mark === 'feff' ? 'utf-16be' : 'utf-8';
}
