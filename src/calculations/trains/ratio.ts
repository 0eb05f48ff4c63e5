import { valueOf } from '../../geometry/fractions.js';
import { product, trainRatio } from '../../geometry/trains/ratio.js';
import { lowestTerms } from '../../handbook/trains/primes.js';
import { calculation } from '../calculation.js';
import { pinions, products, refuseOddOnes, refuseTooLarge, wheels } from './counts.js';
import { byPrimes, last, productProofs, productSteps } from './products.js';

export const ratio = calculation({
  name: 'train.ratio',
  title: 'Ratio of a train',
  given: { wheels, pinions },
  found: {
    ratio: { symbol: 'i', unit: '', name: 'turns of the last pinion for one of the first wheel' },
    numerator: { unit: '', name: 'numerator of the ratio in lowest terms' },
    denominator: { unit: '', name: 'denominator of the ratio in lowest terms' },
    ...products,
  },
  refuse: (g) => {
    refuseOddOnes(g);
    refuseTooLarge('wheels', g.wheels);
    refuseTooLarge('pinions', g.pinions);
  },
  work: (g) => {
    const exact = trainRatio(g.wheels, g.pinions);
    return {
      ratio: valueOf(exact),
      ...exact,
      wheelProduct: product(g.wheels),
      pinionProduct: product(g.pinions),
    };
  },
  proofs: [
    { of: 'ratio', formula: 'train-ratio' },
    { of: 'numerator', source: byPrimes, value: (g) => lowestTerms(g.wheels, g.pinions).numerator },
    { of: 'denominator', source: byPrimes, value: (g) => lowestTerms(g.wheels, g.pinions).denominator },
    ...productProofs,
  ],
  working: (g, found) => [
    ...productSteps(g),
    'i = Z/N',
    { say: `In lowest terms: ${found.numerator}/${found.denominator}.` },
  ],
  slips: (g) => ({
    upsideDown: {
      of: 'ratio',
      formula: 'N/Z',
      says: 'You put the pinions over the wheels. A wheel turns its pinion faster, so wheels go on top.',
    },
    // A worm counts as one leaf: left out, it changes nothing.
    ...(last(g.pinions) > 1 && {
      lastPinion: {
        of: 'ratio',
        formula: `i*${last(g.pinions)}`,
        says: 'You left out the last pinion. Every wheel has a pinion under it.',
      },
    }),
    ...(g.wheels.length > 1 && {
      added: {
        of: 'ratio',
        formula: `(${g.wheels.join(' + ')})/(${g.pinions.join(' + ')})`,
        says: 'You added the counts. The wheels multiply, and so do the pinions.',
      },
      addedPairs: {
        of: 'ratio',
        formula: g.wheels.map((teeth, pair) => `${teeth}/${g.pinions[pair]}`).join(' + '),
        says: 'You added the ratios of the pairs. One turns the next, so they multiply.',
      },
    }),
  }),
});
