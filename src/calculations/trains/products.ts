import { derived } from '../../handbook/record.js';
import { lowestTerms } from '../../handbook/trains/primes.js';
import type { Step } from '../calculation.js';
import { multiplied } from './counts.js';

interface Train {
  readonly wheels: readonly number[];
  readonly pinions: readonly number[];
}

export const byPrimes = derived(
  'every count divided out into primes, struck out above and below, and multiplied up',
);

/** Both products, by their primes. */
export const productProofs = [
  {
    of: 'wheelProduct',
    source: byPrimes,
    value: (g: Train) => lowestTerms(g.wheels, []).numerator,
  },
  {
    of: 'pinionProduct',
    source: byPrimes,
    value: (g: Train) => lowestTerms(g.pinions, []).numerator,
  },
] as const;

/** The working of both. */
export const productSteps = (g: Train): Step[] => [
  { say: `Wheels multiplied: ${multiplied(g.wheels)}.` },
  { say: `Pinions multiplied: ${multiplied(g.pinions)}.` },
];

/** What the last pinion has, for whoever leaves it out. */
export const last = (counts: readonly number[]): number => counts.at(-1) ?? 1;
