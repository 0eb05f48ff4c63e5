import { type CompoundSetting, compoundSettings } from '../../geometry/dividing/compound.js';
import { type Fraction, fraction } from '../../geometry/fractions.js';
import { compoundCountByTrial, inLowestTerms, movesComeTo } from '../../handbook/dividing/compound-trial.js';
import { derived } from '../../handbook/record.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { spacesInWords } from '../moves.js';
import { remembered } from '../remembered.js';
import { inWords as fractionInWords } from './fraction-in-words.js';
import { divisions, MOST_SETTINGS, plates, possible, ratio, reason } from './givens.js';
import { turnsForOne } from './turns-in-words.js';

interface CompoundGiven {
  readonly divisions: number;
  readonly ratio: number;
  readonly plates: readonly (readonly number[])[];
}

const everyHole = derived('every hole of every circle tried with every other circle of its plate');
const countOf = remembered((g: CompoundGiven) => compoundCountByTrial(g.divisions, g.ratio, g.plates));

/** `2/3 of a turn`, `20 turns`. */
const turnsInWords = (turns: Fraction): string =>
  turns.denominator === 1 ? counted(turns.numerator, 'turn') : `${fractionInWords(turns)} of a turn`;

function none({ divisions, ratio }: CompoundGiven): string {
  return `no two circles of one plate make ${turnsInWords(fraction(ratio, divisions))}`;
}

/** The crank first, then plate and crank together: the one move cannot be made on both circles by the crank alone. */
function inWords({ turns, holes1, circle1, sense, holes2, circle2, plate }: CompoundSetting): string {
  return `Plate ${plate}: first the crank, its pin in the ${circle1}-hole circle, ${spacesInWords(turns, holes1)} forward; then pull the stop pin and turn plate and crank together, ${counted(holes2, 'space')} ${sense} on the ${circle2}.`;
}

function checkOf(
  { turns, holes1, circle1, sense, holes2, circle2 }: CompoundSetting,
  g: CompoundGiven,
): string {
  const start = turns === 0 ? '' : `${turns} + `;
  const sign = sense === 'forward' ? '+' : '−';
  return `Check: ${start}${holes1}/${circle1} ${sign} ${holes2}/${circle2} = ${fractionInWords(fraction(g.ratio, g.divisions))}.`;
}

interface CompoundFound {
  readonly possible: boolean;
  readonly count: number;
  readonly settings: readonly CompoundSetting[];
  readonly reason?: string;
}

const given = { divisions, ratio, plates };

export const compound = calculation<typeof given, CompoundFound>({
  name: 'dividing.compound',
  title: 'Compound indexing, exact',
  given,
  found: {
    possible,
    count: { symbol: 'q', unit: '', name: 'settings in all' },
    settings: { unit: '', name: `two moves on one plate, the simplest ${MOST_SETTINGS}` },
    reason,
  },
  work: (g) => {
    const { count, settings } = compoundSettings(fraction(g.ratio, g.divisions), g.plates, MOST_SETTINGS);
    return count > 0
      ? { possible: true, count, settings }
      : { possible: false, count, settings, reason: none(g) };
  },
  proofs: [
    { of: 'possible', source: everyHole, value: (g) => countOf(g) > 0 },
    { of: 'count', source: everyHole, value: countOf },
    {
      of: 'settings',
      source: derived('each setting put back: its two moves added as fractions'),
      measure: {
        name: 'what the moves of each setting come to, in turns',
        of: (settings: readonly CompoundSetting[]) => settings.map(movesComeTo),
      },
      value: (g) =>
        Array.from({ length: Math.min(MOST_SETTINGS, countOf(g)) }, () =>
          inLowestTerms(g.ratio, g.divisions),
        ),
    },
  ],
  working: (g, found) => [
    { say: turnsForOne(g.divisions, g.ratio) },
    ...(found.possible
      ? found.settings.slice(0, 2).map((setting) => ({ say: `${inWords(setting)} ${checkOf(setting, g)}` }))
      : [{ say: `Not possible: ${none(g)}.` }]),
  ],
});
