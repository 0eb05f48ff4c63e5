/** A piece of an answer: a number as it was written, a word, or one other sign. */
export interface Token {
  readonly kind: 'number' | 'word' | 'sign';
  readonly text: string;
}

const PIECE = /(?<number>\d+(?:[.,]\d+)*|[.,]\d+)|(?<word>[\p{L}_]+)|(?<sign>[^\s])/gu;

/** The pieces of a tidied answer, in their order. */
export function tokensOf(text: string): Token[] {
  return [...text.matchAll(PIECE)].map(({ 0: piece, groups }): Token => {
    if (groups?.number !== undefined) return { kind: 'number', text: piece };
    return { kind: groups?.word !== undefined ? 'word' : 'sign', text: piece };
  });
}

export const numberToken = (value: number): Token => ({ kind: 'number', text: String(value) });
export const signToken = (text: string): Token => ({ kind: 'sign', text });
