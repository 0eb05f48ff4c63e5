import { numberToken, signToken, type Token } from './tokens.js';

const SMALL =
  'nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen';
const ROUND = 'twenty thirty forty fifty sixty seventy eighty ninety';
const NUMBERS: ReadonlyMap<string, number> = new Map([
  ...SMALL.split(' ').map((word, at) => [word, at] as const),
  ...ROUND.split(' ').map((word, at) => [word, 20 + 10 * at] as const),
  ['zero', 0],
  ['nil', 0],
  ['fourty', 40],
]);
const PARTS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    half: 2,
    halve: 2,
    third: 3,
    quarter: 4,
    fifth: 5,
    sixth: 6,
    seventh: 7,
    eighth: 8,
    ninth: 9,
    tenth: 10,
    twelfth: 12,
    sixteenth: 16,
  }),
);

/** The pieces of an answer with its numbers in figures: `sixty-four` is 64, `two thirds` 2/3, `one and a half` 1 and 1/2. */
export function inFigures(tokens: readonly Token[]): Token[] {
  const figures: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const { value, next } = wholeAt(tokens, at);
    figures.push(value === undefined ? (tokens[at] as Token) : numberToken(value));
    at = next;
  }
  return figures.flatMap((token, at): Token[] => {
    const part = partOf(token);
    // An article or a hyphen goes with the part that follows: a half, two-thirds.
    if (part === undefined)
      return partOf(figures[at + 1]) !== undefined && (isArticle(token) || token.text === '-') ? [] : [token];
    const before = figures[at - 1]?.text === '-' ? figures[at - 2] : figures[at - 1];
    const over = [signToken('/'), numberToken(part)];
    if (before?.kind === 'number') return over;
    return isArticle(before) || part === 2 ? [numberToken(1), ...over] : [token];
  });
}

const partOf = (token: Token | undefined): number | undefined => PARTS.get(singular(token?.text ?? ''));
const singular = (word: string): string => (word === 'halves' ? 'half' : word.replace(/s$/, ''));
const isArticle = (token: Token | undefined): boolean => token?.text === 'a' || token?.text === 'an';

/** The whole number in words that starts at a place, and the place after it. */
function wholeAt(tokens: readonly Token[], at: number): { value?: number; next: number } {
  const word = (place: number): string => tokens[place]?.text ?? '';
  const hundreds =
    word(at) === 'hundred'
      ? 1
      : word(at + 1) === 'hundred'
        ? isArticle(tokens[at])
          ? 1
          : NUMBERS.get(word(at))
        : undefined;
  if (hundreds !== undefined) {
    const after = at + (word(at) === 'hundred' ? 1 : 2);
    const rest = underHundred(tokens, word(after) === 'and' ? after + 1 : after);
    return { value: hundreds * 100 + (rest.value ?? 0), next: rest.value === undefined ? after : rest.next };
  }
  return underHundred(tokens, at);
}

function underHundred(tokens: readonly Token[], at: number): { value?: number; next: number } {
  const value = NUMBERS.get(tokens[at]?.text ?? '');
  if (value === undefined) return { next: at + 1 };
  const hyphen = tokens[at + 1]?.text === '-' ? 1 : 0;
  const ones = NUMBERS.get(tokens[at + 1 + hyphen]?.text ?? '') ?? 0;
  return value >= 20 && ones > 0 && ones < 10
    ? { value: value + ones, next: at + 2 + hyphen }
    : { value, next: at + 1 };
}
