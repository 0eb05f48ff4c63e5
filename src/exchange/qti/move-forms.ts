import { type Move, movesInWords } from '../../calculations/moves.js';

/** How people write that a count cannot be indexed. */
export const impossibleForms: readonly string[] = [
  'not possible',
  'not possible on these plates',
  'impossible',
  'cannot be done',
  'none',
  'no',
];

/**
 * How people write a movement of the crank: `15 on 21`, `1 and 2/28`, `1 whole turn and 2 spaces on the 28-hole
 * circle`, and the part of a turn in lowest terms, `5/7 of a turn`. Each once.
 */
export function moveForms(turns: number, { holes, circle }: Move): string[] {
  const whole = wholeForms(turns);
  const forms = holes === 0 ? whole : withSpaces(turns, holes, circle, whole);
  return [...new Set([movesInWords(turns, [{ holes, circle }]), ...forms])];
}

/** The same as a regular expression, for any spacing; the part of a turn is not brought to lowest terms. */
export function movePattern(turns: number, { holes, circle }: Move): string {
  const whole = String.raw`${turns}\s*(whole\s+)?turns?`;
  const after = String.raw`((\s*-?\s*hole)?\s+circle|\s+turns?|\s+of\s+a\s+turn)?`;
  if (holes === 0) {
    const none = String.raw`(no\s+spaces?|0(\s*spaces?)?)(\s*on\s*(the\s+)?${circle}${after})?`;
    return String.raw`\s*(${turns}|${whole})(\s*(and|,|\+)\s*${none})?\s*`;
  }
  const part = String.raw`${holes}\s*/\s*${circle}`;
  const spaces = String.raw`(${holes}\s*(spaces?\s*)?on\s*(the\s+)?${circle}|${part})${after}`;
  if (turns === 0) return String.raw`\s*${spaces}\s*`;
  // Two bare numbers side by side are a whole and a part only where a stroke makes the second a part.
  const joined = String.raw`(${whole}(\s*(and|,|\+)\s*|\s+)|${turns}\s*(and|,|\+)\s*)${spaces}`;
  return String.raw`\s*(${joined}|${turns}\s+${part}${after})\s*`;
}

function wholeForms(turns: number): string[] {
  if (turns === 0) return [];
  const word = turns === 1 ? 'turn' : 'turns';
  return [`${turns}`, `${turns} ${word}`, `${turns} whole ${word}`];
}

function withSpaces(turns: number, holes: number, circle: number, whole: readonly string[]): string[] {
  const spaces = `${holes} ${holes === 1 ? 'space' : 'spaces'}`;
  const onCircle = [
    `${holes} on ${circle}`,
    `${holes} on the ${circle}`,
    `${spaces} on ${circle}`,
    `${spaces} on the ${circle}`,
    `${spaces} on the ${circle}-hole circle`,
    `${spaces} on the ${circle} hole circle`,
    `${spaces} on the ${circle} circle`,
  ];
  const common = greatestCommon(holes, circle);
  const fractions = [
    [holes, circle],
    [holes / common, circle / common],
  ] as const;
  return [
    ...(turns === 0
      ? onCircle
      : whole.flatMap((start, bare) =>
          [' and ', ' + ', ', ', ...(bare === 0 ? [] : [' '])].flatMap((join) =>
            onCircle.map((one) => start + join + one),
          ),
        )),
    ...fractions.flatMap(([top, bottom]) => {
      const mixed = turns === 0 ? `${top}/${bottom}` : `${turns} ${top}/${bottom}`;
      const improper = `${turns * bottom + top}/${bottom}`;
      return [mixed, improper].flatMap((one) => [one, `${one} turn`, `${one} turns`, `${one} of a turn`]);
    }),
  ];
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}
