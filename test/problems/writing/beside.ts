import type { Expected, ExpectedNumber } from '../../../src/problems/expected.js';
import type { Part } from '../../../src/problems/problem.js';
import { everyOrder } from './letters.js';
import { wordWays } from './words.js';

/** Answers that lie just within what is accepted: the ends that are printed, and what is rounded to them. */
export function justInside({ accepted, expects }: Pick<Part, 'accepted' | 'expects'>): string[] {
  if (expects.kind !== 'number' || expects.step === 0) return [];
  return [...(/ to /.test(accepted) ? accepted.split(' to ') : []), ...offBy(expects, [0, 0.4])];
}

/** Answers that are near a right one, and are not right. */
export function justOutside(expects: Expected): string[] {
  switch (expects.kind) {
    case 'number':
      return numbersOutside(expects);
    case 'moves': {
      const { turns, moves } = expects;
      if (moves.length === 0) return ['possible', 'yes', '1 turn'];
      return [
        'not possible',
        ...moves.flatMap(({ holes, circle }) => [
          `${turns + 1} turns and ${holes} on ${circle}`,
          `${turns} turns and ${holes + 1} on ${circle}`,
          `${turns} turns and ${holes} on ${circle + 1}`,
          // The right part of a turn, but on no plate.
          ...(holes === 0 ? [] : [`${turns} turns and ${holes * 7} on ${circle * 7}`]),
        ]),
      ];
    }
    case 'word':
      return expects.other === undefined
        ? []
        : wordWays({ ...expects, word: expects.other, other: expects.word });
    case 'set': {
      const { items } = expects;
      if (items.length === 0) return ['7', 'all of them'];
      const fewer = items.map((_, at) => items.filter((_, other) => other !== at).join(', '));
      return [...fewer.filter((text) => text !== ''), `${items.join(', ')}, 7`, 'none'];
    }
    case 'choice':
      return expects.letters.filter((letter) => letter !== expects.letter);
    case 'order':
      return everyOrder(expects.letters)
        .map((letters) => letters.join(', '))
        .filter((text) => text !== expects.letters.join(', '));
    case 'numbers': {
      const { each } = expects;
      const all = each.map(({ value }) => String(value));
      return [all.slice(1).join(', '), [...all, '1'].join(', ')].filter((text) => text !== '');
    }
  }
}

function numbersOutside(expects: ExpectedNumber): string[] {
  if (expects.step === 0) return [-1, -0.5, 0.5, 1].map((by) => String(expects.value + by));
  return [...offBy(expects, [0.6, 1]), ...tooRound(expects)];
}

/** The right number in the other unit, rounded there so far that it is no longer right. */
function tooRound({ value, unit, step, within }: ExpectedNumber): string[] {
  const other = OTHER[unit];
  if (!other) return [];
  return [0, 1, 2, 3].flatMap((places) => {
    const written = (value * other.size).toFixed(places);
    const half = 10 ** -places / 2 / other.size;
    const off = Math.abs(Number(written) / other.size - value);
    return half > 2 * Math.max(step, within) && off > within + step ? [`${written} ${other.unit}`] : [];
  });
}

/** Numbers as far off as is taken, either way, and by so many steps more; in the other unit as well. */
function offBy({ value, unit, step, within }: ExpectedNumber, steps: readonly number[]): string[] {
  const taken = Math.floor(within / step + 0.01);
  const numbers = steps.flatMap((more) => [-1, 1].map((side) => value + side * (taken + more) * step));
  const other = OTHER[unit];
  return numbers.flatMap((number) => [
    `${number.toFixed(8)} ${unit}`,
    ...(other ? [`${(number * other.size).toFixed(8)} ${other.unit}`] : []),
  ]);
}

const OTHER: Readonly<Record<string, { readonly unit: string; readonly size: number }>> = {
  mm: { unit: 'in', size: 1 / 25.4 },
  in: { unit: 'mm', size: 25.4 },
  '°': { unit: '′', size: 60 },
};
