/**
 * A text as a CSS string, for the running heads. Whatever could end the string, or the style element that it
 * stands in, is written as a code.
 */
export function cssString(text: string): string {
  const escaped = text.replace(
    /["\\<>&\p{Cc}\u2028\u2029]/gu,
    (mark) => `\\${mark.codePointAt(0)?.toString(16)} `,
  );
  return `"${escaped.replaceAll('\\0 ', '\\fffd ')}"`;
}

/** Cut at a word, so that a running head stays on its line. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text;
  const cut = text.slice(0, most - 1);
  const space = cut.lastIndexOf(' ');
  return `${space > most / 2 ? cut.slice(0, space) : cut}…`;
}
