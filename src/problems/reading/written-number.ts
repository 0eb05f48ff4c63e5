import { type Numeral, numeralsOf } from './numeral.js';
import type { Token } from './tokens.js';

/** `5/7`, `1 5/7`, `1-5/7`, `1 and 5/7`, as letters. */
const FRACTION = /^(?:n-?)?n\/n/;
/** Thousands that stand apart, and stray spaces beside a point. */
const APART: readonly (readonly [shape: RegExp, written: RegExp])[] = [
  [/^nn/, /^\d{1,3} \d{3}(?:\.\d+)?(?: |$)/],
  [/^nn/, /^\d+ [.,]\d+(?: |$)/],
  [/^n[.,]n/, /^\d+ [.,] \d+(?: |$)/],
];

/** The number that starts some tokens, with the ways to read it, and how many of them it takes. */
export interface WrittenNumber {
  readonly numerals: readonly Numeral[];
  readonly length: number;
}

/** Reads a decimal, a whole number or a fraction, alone or behind a whole number. */
export function numberAtStart(tokens: readonly Token[]): WrittenNumber {
  const shape = tokens.map(letterOf).join('');
  const length = FRACTION.exec(shape)?.[0].length;
  if (length !== undefined) return { numerals: fractionOf(tokens.slice(0, length)), length };
  const texts = tokens.slice(0, 3).map(({ text }) => text);
  const apart = APART.find(([kinds, written]) => kinds.test(shape) && written.test(texts.join(' ')));
  const taken = apart?.[0].exec(shape)?.[0].length ?? 1;
  return { numerals: numeralsOf(texts.slice(0, taken).join('')), length: taken };
}

/** One letter for each token, so that a pattern can be looked for among them. */
function letterOf({ kind, text }: Token): string {
  if (kind === 'number') return 'n';
  return text === 'and' || text === '+' ? '-' : text.length === 1 ? text : '_';
}

function fractionOf(tokens: readonly Token[]): Numeral[] {
  const figures = tokens.filter(({ kind }) => kind === 'number').map(({ text }) => text);
  if (!figures.every((text) => /^\d{1,9}$/.test(text))) return [];
  const [bottom = 0, top = 0, whole = 0] = figures.map(Number).reverse();
  return bottom === 0 ? [] : [{ value: whole + top / bottom, half: 0, ambiguous: false }];
}
