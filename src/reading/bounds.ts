import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';

/** The longest text that is read, in characters; the longest lesson that comes with Benchleaf has 30,000. */
const LONGEST = 120_000;
/** The longest line, in characters. What looks for a pattern in a line may take as long as its square. */
const LONGEST_LINE = 2000;

/**
 * Characters that no text may hold: control characters, those that turn letters round, halves of a pair, and those
 * that are none. On a terminal or a page they would show something else than stands there.
 */
const UNSEEN = /[^\P{Cc}\t\n\r]|[\u2028\u2029\u202A-\u202E\u2066-\u2069\uFEFF\uFFFE\uFFFF]|\p{Cs}/u;

/** A character that no text may hold: where the first is, and how it is called; undefined when there is none. */
export function unseenIn(text: string): { readonly at: number; readonly name: string } | undefined {
  const found = UNSEEN.exec(text);
  if (!found) return undefined;
  const code = (found[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return { at: found.index, name: `U+${code}` };
}

/** What is said of such a character, and the cure. */
export const UNSEEN_SAID = (name: string): string => `a character that cannot be seen stands here: ${name}`;
export const UNSEEN_HINT = 'Take it out, and type the words again if need be.';

/**
 * Whether a text is of a size that a person writes, in letters that can be seen.
 *
 * @param area what it is, in a word, for the rule of a message: `kit`, `lesson`, `course`
 * @param firstLine line of the file on which the text starts
 * @throws {ContentError} naming the first fault and its place
 */
export function demandReadable(text: string, file: string, area: string, firstLine = 1): void {
  const fail = (rule: string, message: string, line: number, column: number, hint: string): never => {
    const start = { line, column };
    const fault: Diagnostic = {
      severity: 'error',
      rule: `${area}/${rule}`,
      message,
      file,
      start,
      hints: [hint],
    };
    throw new ContentError([fault], new Map([[file, '\n'.repeat(firstLine - 1) + plain]]));
  };
  const plain = text.replace(/^\uFEFF/, '');
  if (plain.length > LONGEST)
    fail(
      'too-long',
      `a ${area} may have ${LONGEST} characters at most`,
      firstLine,
      1,
      'Is this the right file?',
    );
  for (const [at, line] of plain.split('\n').entries()) {
    if (line.length > LONGEST_LINE)
      fail(
        'too-long',
        `this line has ${line.length} characters; ${LONGEST_LINE} at most`,
        firstLine + at,
        LONGEST_LINE + 1,
        'Break it into several lines.',
      );
    const unseen = unseenIn(line);
    if (unseen) fail('character', UNSEEN_SAID(unseen.name), firstLine + at, unseen.at + 1, UNSEEN_HINT);
  }
}
