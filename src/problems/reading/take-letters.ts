import type { ExpectedChoice, ExpectedOrder } from '../expected.js';
import type { SlipLine } from '../problem.js';
import { howToWrite } from './how-to-write.js';
import { RIGHT, slipped, unread, type Verdict, WRONG } from './verdict.js';

/** Words before a letter that tell nothing. */
const IDLE =
  /\b(?:answer|option|letter|choice|choose|pick|think|i|my|is|it|its|the|number|then|and|first|last|to)\b/g;

/** What is said of one letter of those that are printed. @param text tidied */
export function takeChoice(text: string, expects: ExpectedChoice, slips: readonly SlipLine[]): Verdict {
  const letters = lettersIn(text, expects.letters);
  const [letter, ...more] = letters ?? [];
  if (letter === undefined || more.length > 0) return unread(howToWrite(expects));
  if (letter === expects.letter) return RIGHT;
  const slip = slips.find(({ gives }) => gives === letter);
  return slip ? slipped(slip) : WRONG;
}

/** What is said of all the letters in an order. @param text tidied */
export function takeOrder(text: string, expects: ExpectedOrder, slips: readonly SlipLine[]): Verdict {
  const letters = lettersIn(text, expects.letters);
  if (letters?.length !== expects.letters.length || new Set(letters).size < letters.length)
    return unread(howToWrite(expects));
  if (letters.every((letter, at) => letter === expects.letters[at])) return RIGHT;
  const slip = slips.find(({ gives }) => gives === letters.join(', '));
  return slip ? slipped(slip) : WRONG;
}

/** The letters of an answer, in capitals; undefined where there is anything else. */
function lettersIn(text: string, known: readonly string[]): string[] | undefined {
  // Where only one word is written it is read letter by letter: CAB.
  const letters = [
    ...text
      .replace(IDLE, '')
      .replace(/[\s,.;:()[\]<>'"→|/-]|=/g, '')
      .toUpperCase(),
  ];
  return letters.every((letter) => known.includes(letter)) ? letters : undefined;
}
