import { InputError } from '../diagnostics/errors.js';
import type { Faults, Written } from './fault.js';
import { covered } from './glyph-table.js';

/** Line ends and tabs; fractions, which the font builds; and the narrow space before a unit, which becomes one of theirs. */
const ALSO = '\\n\\r\\t⅛⅜⅝⅞⅓⅔\\u202F';
const ranges = covered.split(' ').map((range) => range.replace(/[0-9A-F]+/g, (code) => `\\u{${code}}`));
const NOT_PRINTABLE = new RegExp(`[^${ALSO}${ranges.join('')}]`, 'gu');

/** Most texts are, and need no closer look. */
const PLAIN = /^[ -~\n]*$/;

/**
 * Characters that some face of the sheets has no glyph for, each once. An accent that stands apart counts as one
 * with its letter.
 */
export function missingGlyphs(text: string): string[] {
  if (PLAIN.test(text)) return [];
  return [...new Set(text.normalize('NFC').match(NOT_PRINTABLE) ?? [])];
}

/**
 * Every text in a sheet's data can be printed.
 *
 * @throws {InputError} naming the first character that cannot
 */
export function demandGlyphs(data: unknown): void {
  for (const text of textsIn(data))
    for (const missing of missingGlyphs(text)) throw new InputError('text', text, accepted(missing));
}

/** Gathers each character of an author's text that cannot be printed. */
export function noteGlyphs(written: Written, faults: Faults): void {
  for (const missing of missingGlyphs(written.text)) {
    const at = written.text.indexOf(missing);
    const message = `no typeface here has the character ${named(missing)}`;
    faults.add('glyph', written, at, missing.length, message, 'Write another character, or the word for it.');
  }
}

/** Lessons are printed again and again. */
const sound = new WeakSet<object>();

/** The same for all the texts in some data of a lesson, whose places are not known. */
export function noteGlyphsIn(data: object, about: Omit<Written, 'text' | 'line'>, faults: Faults): void {
  if (sound.has(data)) return;
  const faulty = [...textsIn(data)].filter((text) => missingGlyphs(text).length > 0);
  for (const text of faulty) noteGlyphs({ ...about, text, line: undefined }, faults);
  if (faulty.length === 0) sound.add(data);
}

function* textsIn(data: unknown): Generator<string> {
  if (typeof data === 'string') yield data;
  else if (typeof data === 'object' && data !== null)
    for (const value of data instanceof Map ? data.values() : Object.values(data)) yield* textsIn(value);
}

const accepted = (missing: string): string => `text without ${named(missing)}, which no typeface here has`;

/** A character with its code, `“漢” (U+6F22)`; the code alone of one that is not seen, or moves what is. */
export function named(mark: string): string {
  const code = (mark.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return /[\p{C}\p{Z}]/u.test(mark) ? `U+${code}` : `“${mark}” (U+${code})`;
}
