import type { Expected } from './expected.js';
import type { Part, SlipLine } from './problem.js';
import { howToWrite } from './reading/how-to-write.js';
import { takeChoice, takeOrder } from './reading/take-letters.js';
import { takeMoves } from './reading/take-moves.js';
import { takeNumber } from './reading/take-number.js';
import { takeNumbers } from './reading/take-numbers.js';
import { takeSet } from './reading/take-set.js';
import { takeWord } from './reading/take-word.js';
import { tidied, unnamed } from './reading/tidy.js';
import { slipped, unread, type Verdict } from './reading/verdict.js';

export { takesNumber } from './reading/takes.js';
export type { Verdict } from './reading/verdict.js';

/**
 * What is said of an answer as it was typed, in any of the ways that people write it. A right answer is never taken for
 * a slip, nor a slip for right.
 *
 * @param typed any text; what cannot be read is answered by how to write it, never by an error
 */
export function judge(typed: string, { expects, slips }: Pick<Part, 'expects' | 'slips' | 'unit'>): Verdict {
  const text = tidied(typed);
  if (text === undefined || text === '') return unread(howToWrite(expects));
  const verdict = verdictOn(unnamed(text), expects, slips);
  if (verdict.kind === 'right' || verdict.kind === 'slip') return verdict;
  // A slip may give what is read by its words alone.
  const line = slips.find(({ gives }) => tidied(gives) === text);
  return line ? slipped(line) : verdict;
}

function verdictOn(text: string, expects: Expected, slips: readonly SlipLine[]): Verdict {
  switch (expects.kind) {
    case 'number':
      return takeNumber(text, expects, slips);
    case 'numbers':
      return takeNumbers(text, expects);
    case 'moves':
      return takeMoves(text, expects, slips);
    case 'word':
      return takeWord(text, expects);
    case 'set':
      return takeSet(text, expects);
    case 'choice':
      return takeChoice(text, expects, slips);
    case 'order':
      return takeOrder(text, expects, slips);
  }
}
