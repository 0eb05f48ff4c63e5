import { isSpelt } from './spelling.js';
import { inFigures } from './spelt.js';
import { tokensOf } from './tokens.js';
import { withNot } from './yes-no.js';

const ARTICLES = new Set(['the', 'a', 'an', 'it', 'that', 'is', 'of', ',', '.', '-', '"', "'", '(', ')']);

/** The words of a tidied phrase that count: without articles and stops, numbers in figures. */
export function phraseOf(text: string): string[] {
  const pieces = inFigures(tokensOf(withNot(text))).map((token) => token.text);
  const words = pieces.filter((piece) => !ARTICLES.has(piece)).map(figures);
  return words.length > 0 ? words : pieces;
}

/**
 * Whether two phrases are the same, but for a letter of their longer words.
 *
 * @param shortest words of fewer letters must be right
 */
export function samePhrase(typed: readonly string[], word: readonly string[], shortest: number): boolean {
  if (typed.length !== word.length) return typed.join('') === word.join('');
  return typed.every((one, at) => isSpelt(one, word[at] ?? '', shortest));
}

/** `2.50` is 2.5. */
const figures = (text: string): string => (/^\d+(?:\.\d+)?$/.test(text) ? String(Number(text)) : text);
