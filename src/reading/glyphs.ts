import { z } from 'zod';
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

/** A character with its code, `“漢” (U+6F22)`; the code alone of one that is not seen, or moves what is. */
export function named(mark: string): string {
  const code = (mark.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return /[\p{C}\p{Z}]/u.test(mark) ? `U+${code}` : `“${mark}” (U+${code})`;
}

/** A name that is printed: 1 to 80 letters that the typefaces have. */
export const printableName = z
  .string()
  .trim()
  .min(1)
  .max(80)
  .superRefine((text, context) => {
    const [missing] = missingGlyphs(text);
    if (missing !== undefined)
      context.addIssue({ code: 'custom', message: `no typeface here has the character ${named(missing)}` });
  });
