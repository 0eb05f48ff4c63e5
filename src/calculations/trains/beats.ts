import { valueOf } from '../../geometry/fractions.js';
import { beatsPerTurn, product, trainRatio } from '../../geometry/trains/ratio.js';
import { derived } from '../../handbook/record.js';
import { lowestTerms } from '../../handbook/trains/primes.js';
import { calculation } from '../calculation.js';
import { escapeTeeth, pinions, products, refuseOddOnes, refuseTooLarge, wheels } from './counts.js';
import { byPrimes, last, productProofs, productSteps } from './products.js';

export const beats = calculation({
  name: 'train.beats',
  title: 'Beats of a train from the wheel that turns once an hour',
  given: { wheels, pinions, escapeTeeth },
  found: {
    beatsPerHour: { symbol: 'B', unit: '', name: 'beats an hour' },
    beatsPerMinute: { symbol: 'b', unit: '', name: 'beats a minute' },
    ...products,
  },
  refuse: (g) => {
    refuseOddOnes(g);
    refuseTooLarge('wheels', g.wheels, 2 * g.escapeTeeth);
    refuseTooLarge('pinions', g.pinions);
  },
  work: (g) => {
    const beatsPerHour = valueOf(beatsPerTurn(trainRatio(g.wheels, g.pinions), g.escapeTeeth));
    return {
      beatsPerHour,
      beatsPerMinute: beatsPerHour / 60,
      wheelProduct: product(g.wheels),
      pinionProduct: product(g.pinions),
    };
  },
  proofs: [
    {
      of: 'beatsPerHour',
      source: byPrimes,
      value: (g) => {
        const { numerator, denominator } = lowestTerms([2, g.escapeTeeth, ...g.wheels], g.pinions);
        return numerator / denominator;
      },
    },
    { of: 'beatsPerHour', formula: 'beats-per-hour' },
    { of: 'beatsPerMinute', formula: 'beats-per-minute' },
    {
      of: 'beatsPerMinute',
      source: derived('sixty minutes struck out against the train’s primes with the pinions'),
      value: (g) => {
        const { numerator, denominator } = lowestTerms([2, g.escapeTeeth, ...g.wheels], [60, ...g.pinions]);
        return numerator / denominator;
      },
      within: (g) => 1e-12 * product(g.wheels) * g.escapeTeeth,
    },
    ...productProofs,
  ],
  working: (g) => [
    { say: 'Begin at the wheel that turns once an hour, and end at the pinion of the escape wheel.' },
    ...productSteps(g),
    { say: 'Each tooth of the escape wheel gives two beats, tick and tock.' },
    'B = 2*E*Z/N',
    'b = B/60',
  ],
  slips: (g) => ({
    oneBeat: {
      of: 'beatsPerHour',
      formula: 'E*Z/N',
      says: 'You forgot the two: every tooth of the escape wheel gives a tick and a tock.',
    },
    upsideDown: {
      of: 'beatsPerHour',
      formula: '2*E*N/Z',
      says: 'You put the pinions over the wheels. The escape wheel turns faster than the hour wheel, not slower.',
    },
    greatWheel: {
      of: 'beatsPerHour',
      formula: '12*B',
      says: 'Twelve times too many: you began at a great wheel that turns in twelve hours. Begin where it turns once an hour.',
    },
    ...(last(g.pinions) > 1 && {
      lastPinion: {
        of: 'beatsPerHour',
        formula: `B*${last(g.pinions)}`,
        says: 'You left out the last pinion, the one that carries the escape wheel.',
      },
    }),
    noEscapeWheel: {
      of: 'beatsPerHour',
      formula: '2*Z/N',
      says: 'You left out the teeth of the escape wheel.',
    },
    hour: { of: 'beatsPerMinute', formula: 'B', says: 'Those are the beats of an hour.' },
    second: {
      of: 'beatsPerMinute',
      formula: 'B/3600',
      says: 'Those are the beats of a second: you divided by 60 twice.',
    },
    halfBeats: { of: 'beatsPerMinute', formula: 'b/2', says: 'Tick and tock are two beats.' },
  }),
});
