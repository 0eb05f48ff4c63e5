import { InputError } from '../../diagnostics/errors.js';
import { type Fraction, valueOf } from '../../geometry/fractions.js';
import { missingCount, product } from '../../geometry/trains/ratio.js';
import { derived } from '../../handbook/record.js';
import { missingByTrial } from '../../handbook/trains/counting.js';
import { lowestTerms } from '../../handbook/trains/primes.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { whole } from '../quantity.js';
import { type Count, countsOrAsked } from './asked.js';
import { escapeTeeth, multiplied, PINION, products, refuseOddOnes, refuseTooLarge, WHEEL } from './counts.js';

interface Asked {
  readonly beatsPerHour: number;
  readonly escapeTeeth: number;
  readonly wheels: readonly Count[];
  readonly pinions: readonly Count[];
}

const knownOf = (counts: readonly Count[]): number[] => counts.filter((count) => count !== '?');

/** What is known of the train, and on which side the count is missing. */
const partsOf = (g: Asked) => ({
  place: g.wheels.includes('?') ? ('wheel' as const) : ('pinion' as const),
  known: { wheels: knownOf(g.wheels), pinions: knownOf(g.pinions) },
});

function exactCount(g: Asked): Fraction {
  const { place, known } = partsOf(g);
  return missingCount(place, g.beatsPerHour, g.escapeTeeth, known);
}

/** Why no wheel or pinion can be cut with this count; nothing when it can. */
function whyNot({ numerator, denominator }: Fraction, place: 'wheel' | 'pinion'): string | undefined {
  const [least, most] = place === 'wheel' ? WHEEL : PINION;
  const count = valueOf({ numerator, denominator });
  if (denominator !== 1)
    return `it would take ${numerator}/${denominator}, about ${Number(count.toPrecision(5))}: not a whole number`;
  return count < least || count > most
    ? `it would take ${count}, and a ${place} here has ${least} to ${most}`
    : undefined;
}

const tried = (g: Asked): number | undefined => {
  const { place, known } = partsOf(g);
  const [least, most] = place === 'wheel' ? WHEEL : PINION;
  const count = missingByTrial(place, g.beatsPerHour, g.escapeTeeth, known, most);
  return count !== undefined && count >= least ? count : undefined;
};

const byTrial = derived('every count tried until both sides of the train come to the same');
const byPrimes = derived('every known count divided out into primes, and multiplied up');

type Place = 'wheel' | 'pinion';

const knownInWords = (place: Place, known: readonly number[]): string =>
  known.length === 0
    ? `No ${place} is known: count it as 1.`
    : `${place === 'wheel' ? 'Wheels' : 'Pinions'} that are known, multiplied: ${multiplied(known)}.`;

/** `64 teeth` of a wheel, `8 leaves` of a pinion. */
const inTeeth = (place: Place, count: number): string =>
  place === 'wheel' ? counted(count, 'tooth', 'teeth') : counted(count, 'leaf', 'leaves');

export const missing = calculation({
  name: 'train.missing',
  title: 'The missing count of a train',
  given: {
    beatsPerHour: whole('B', 'beats an hour', 1, 1_000_000),
    escapeTeeth,
    wheels: countsOrAsked('wheels from the one that turns once an hour', ...WHEEL),
    pinions: countsOrAsked('pinions that they drive, in order', ...PINION),
  },
  found: {
    teeth: { symbol: 'x', unit: '', name: 'count of the missing wheel or pinion' },
    possible: { unit: '', name: 'possible' },
    ...products,
    reason: { unit: '', name: 'why it is not possible' },
  },
  refuse: (g) => {
    refuseOddOnes(g);
    if ([...g.wheels, ...g.pinions].filter((count) => count === '?').length !== 1)
      throw new InputError(
        'wheels',
        g.wheels,
        'one ? in all, in wheels or in pinions, for the missing count',
      );
    const { known } = partsOf(g);
    refuseTooLarge('wheels', known.wheels, 2 * g.escapeTeeth);
    refuseTooLarge('pinions', known.pinions, g.beatsPerHour);
  },
  work: (g) => {
    const { place, known } = partsOf(g);
    const count = exactCount(g);
    const reason = whyNot(count, place);
    const possible = reason === undefined;
    return {
      teeth: possible ? count.numerator : null,
      possible,
      wheelProduct: product(known.wheels),
      pinionProduct: product(known.pinions),
      ...(reason !== undefined && { reason }),
    };
  },
  proofs: [
    { of: 'teeth', source: byTrial, value: (g) => tried(g) ?? null },
    { of: 'possible', source: byTrial, value: (g) => tried(g) !== undefined },
    {
      of: 'wheelProduct',
      source: byPrimes,
      value: (g) => lowestTerms(partsOf(g).known.wheels, []).numerator,
    },
    {
      of: 'pinionProduct',
      source: byPrimes,
      value: (g) => lowestTerms(partsOf(g).known.pinions, []).numerator,
    },
  ],
  working: (g, found) => {
    const { place, known } = partsOf(g);
    return [
      { say: knownInWords('wheel', known.wheels) },
      { say: knownInWords('pinion', known.pinions) },
      place === 'wheel' ? 'x = B*N/(2*E*Z)' : 'x = 2*E*Z/(B*N)',
      {
        say: found.possible
          ? `The missing ${place} has ${inTeeth(place, found.teeth ?? 0)}. Put it back and count the beats again.`
          : `Not possible: ${whyNot(exactCount(g), place)}.`,
      },
    ];
  },
  slips: (g) => {
    const wheel = partsOf(g).place === 'wheel';
    return {
      oneBeat: {
        of: 'teeth',
        formula: wheel ? '2*x' : 'x/2',
        says: 'You forgot the two: every tooth of the escape wheel gives a tick and a tock.',
      },
      upsideDown: {
        of: 'teeth',
        formula: '1/x',
        says: 'Your fraction is upside down: no wheel has less than one tooth.',
      },
      beatsOfAMinute: {
        of: 'teeth',
        formula: wheel ? 'x/60' : '60*x',
        says: 'You put in the beats of a minute. The first wheel turns once an hour.',
      },
      noEscapeWheel: {
        of: 'teeth',
        formula: wheel ? 'x*E' : 'x/E',
        says: 'You left out the teeth of the escape wheel.',
      },
    };
  },
});
