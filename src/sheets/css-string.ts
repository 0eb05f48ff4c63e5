import { textWidth } from './text-width.js';

/**
 * A text as a CSS string, for the running heads. Whatever could end the string, or the style element that it
 * stands in, is written as a code, and so is what cannot be seen.
 */
export function cssString(text: string): string {
  const escaped = text.replace(
    /["\\<>&\p{Cc}\p{Cf}\u2028\u2029]/gu,
    (mark) => `\\${mark.codePointAt(0)?.toString(16)} `,
  );
  return `"${escaped.replaceAll('\\0 ', '\\fffd ')}"`;
}

/** A text that runs in its own direction, and lets what is beside it in the line run in its own. */
export function isolated(text: string): string {
  return `\u2068${text}\u2069`;
}

/** Cut at a word, so that a running head keeps to its room: mm, in letters of a size in mm. */
export function shortened(text: string, room: number, size: number): string {
  if (textWidth(text, size) <= room) return text;
  let cut = text;
  while (cut !== '' && textWidth(`${cut}…`, size) > room) cut = cut.slice(0, -1);
  const space = cut.lastIndexOf(' ');
  return `${space > cut.length / 2 ? cut.slice(0, space) : cut}…`;
}
