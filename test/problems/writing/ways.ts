import type { Expected } from '../../../src/problems/expected.js';
import type { Part } from '../../../src/problems/problem.js';
import { letterWays, orderWays } from './letters.js';
import { listWays } from './lists.js';
import { printedMove, rightMoves } from './moves.js';
import { numberWays, someNumberWays } from './numbers.js';
import { anyhow, plain } from './plain.js';
import { setWays, wordWays } from './words.js';

/** Every way to write the right answer of a part. */
export function waysToBeRight({ answer, expects }: Pick<Part, 'answer' | 'expects'>): string[] {
  return [...new Set([...anyhow(answer), ...right(answer, expects)])];
}

function right(answer: string, expects: Expected): string[] {
  switch (expects.kind) {
    case 'number':
      return numberWays(answer, expects);
    case 'numbers':
      return listWays(answer, expects);
    case 'moves':
      return rightMoves(expects);
    case 'word':
      return wordWays(expects);
    case 'set':
      return setWays(expects);
    case 'choice':
      return letterWays(expects.letter);
    case 'order':
      return orderWays(expects.letters);
  }
}

/** Some ways to write what a slip gives. */
export function waysToSlip(gives: string, expects: Expected): string[] {
  const ways = expects.kind === 'number' ? someNumberWays(gives, expects) : otherThanNumber(gives, expects);
  return [...new Set([gives, `  ${plain(gives)} . `, ...ways])];
}

function otherThanNumber(gives: string, { kind }: Expected): string[] {
  if (kind === 'moves') return printedMove(gives);
  if (kind === 'choice') return letterWays(gives);
  return kind === 'order' ? orderWays(gives.split(', ')) : [];
}
