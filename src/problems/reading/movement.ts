import { numeralsOf } from './numeral.js';
import { inFigures } from './spelt.js';
import { conclusion } from './tidy.js';
import { numberToken, type Token, tokensOf } from './tokens.js';

/** A movement of the crank as it was written. */
export interface Movement {
  /** All of it, in turns of the crank. */
  readonly value: number;
  readonly turns: number;
  /** Where one was written. */
  readonly circle?: number;
  /** Where only a number without a circle was: half of one in its last place. */
  readonly half?: number;
}

/** What words tell: turns, spaces, circle, on, and; none of the others tells anything. */
const LETTERS: Readonly<Record<string, string>> = {
  t: 't turn turns rev revs revolution revolutions rotation rotations',
  s: 's sp space spaces hole holes h hls pitch pitches',
  c: 'c circle circles ring row plate',
  o: 'on in out at from using upon @',
  '+': 'and plus + , ; & then with :',
  '/': '/ ÷ over',
  '-': '-',
  ' ': 'the a an whole full complete extra further move crank handle each just of exactly about th ths',
};
const LETTER = new Map(
  Object.entries(LETTERS).flatMap(([letter, words]) =>
    words.split(' ').map((word) => [word, letter] as const),
  ),
);

/** The shapes a movement has once every circle that is marked as one is `k`, and what its numbers are. */
const SHAPES: readonly (readonly [RegExp, ...string[]])[] = [
  [/^(?:nt\+?|n\+)?(?:ns?o+[nk]s?|n(?:s\+?)?k)t?$/, 'sc', 'tsc'],
  [/^ns?o+[nk]s?\+nt$/, 'sct'],
  [/^n(?:s\+?)?k\+nt$/, 'sct'],
  [/^(?:nt\+?)?o?k(?:\+ns?|ns)$/, 'cs', 'tcs'],
  [/^o?k\+?nt\+?ns?$/, 'cts'],
  [/^(?:nt\+?)?on\+?ns$/, 'cs', 'tcs'],
  [/^(?:nt?[+-]?)?n\/nt?$/, 'pq', 'tpq'],
  [/^ntt?(?:\+?ns)?$/, 't', 'ts'],
  [/^n$/, 't'],
];

/**
 * Reads a movement of the crank: `12 on 18`, `12 holes on the 18 circle`, `12/18`, `2/3 turn`, `1 turn and 2 on 28`,
 * `1 2/28`, `on the 28 circle, 2 spaces`.
 *
 * @param text tidied
 * @returns undefined when it cannot be read
 */
export function movementOf(text: string): Movement | undefined {
  const tokens = inFigures(tokensOf(conclusion(text.replace(/[()[\]]/g, ' ')))).map(counted);
  const letters = lettersOf(tokens);
  const numbers = tokens.flatMap(({ kind, text: one }) => (kind === 'number' ? [numeralsOf(one)[0]] : []));
  if (letters === undefined || numbers.length > 3) return undefined;
  for (const shape of [letters.replace(/n-?s?c/, 'k'), letters.replace(/cn/, 'k')])
    for (const [pattern, ...roles] of SHAPES) {
      const role = roles.find((one) => one.length === numbers.length);
      if (role === undefined || !pattern.test(shape)) continue;
      return movementFrom(new Map([...role].map((letter, at) => [letter, numbers[at]])));
    }
  return undefined;
}

type Numbers = ReadonlyMap<string, { readonly value: number; readonly half: number } | undefined>;

function movementFrom(numbers: Numbers): Movement | undefined {
  const number = (role: string): number => numbers.get(role)?.value ?? 0;
  const turns = number('t');
  if (numbers.has('q'))
    return number('q') === 0 ? undefined : { value: turns + number('p') / number('q'), turns };
  if (!numbers.has('c')) {
    // Spaces without a circle are a movement only when there are none.
    if (number('s') !== 0) return undefined;
    return { value: turns, turns, half: numbers.get('t')?.half ?? 0 };
  }
  const circle = number('c');
  return circle === 0 ? undefined : { value: turns + number('s') / circle, turns, circle };
}

/** `no turns` is nought turns, and `a turn` at the start is one. */
function counted(token: Token, at: number, all: readonly Token[]): Token {
  if (token.text === 'no') return numberToken(0);
  return token.text === 'a' && at === 0 && all[1]?.kind === 'word' ? numberToken(1) : token;
}

/** One letter for each piece that tells something; undefined where one is not known. */
function lettersOf(tokens: readonly Token[]): string | undefined {
  const letters = tokens.map(({ kind, text }, at) => {
    if (kind === 'number') return 'n';
    if (text === 'of' && isSpaces(tokens[at - 1]) && isNumber(tokens, at + 1)) return 'o';
    // A turn, and a move from hole to hole: a hyphen joins words, or a whole number and a fraction.
    if (text === '-' && tokens[at + 1]?.kind !== 'number') return ' ';
    return LETTER.get(text);
  });
  return letters.includes(undefined) ? undefined : letters.join('').replaceAll(' ', '').replace(/\++/g, '+');
}

const isSpaces = (token: Token | undefined): boolean =>
  token?.kind === 'number' || LETTER.get(token?.text ?? '') === 's';

const isNumber = (tokens: readonly Token[], at: number): boolean =>
  tokens[tokens[at]?.text === 'the' ? at + 1 : at]?.kind === 'number';
