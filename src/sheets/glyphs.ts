import { InputError } from '../diagnostics/errors.js';
import { missingGlyphs, named } from '../reading/glyphs.js';
import type { Faults, Written } from './fault.js';

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
