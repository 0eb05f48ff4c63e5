import { z } from 'zod';
import { withBacklash, withRipple } from '../../../geometry/cutting/indexing.js';
import { count, word } from '../../given.js';

/** How some cuts may stand aside from where the count has them, besides what is wrong with every move. */
export const unevenGiven = {
  uneven: word('no', 'ripple', 'every-few').default('no'),
  /** How far at most, or each of them; long above 0. */
  unevenArcSeconds: z
    .number()
    .min(-100_000)
    .max(100_000)
    .describe('arc seconds, −100000 to 100000')
    .default(0),
  /** Turns of the crank for one of the work, over which a ripple comes and goes. */
  ratio: count(1, 1000).default(40),
  /** Of how many cuts one stands aside. */
  every: count(2, 20).default(3),
};

export interface Uneven {
  readonly uneven: 'no' | 'ripple' | 'every-few';
  readonly unevenArcSeconds: number;
  readonly ratio: number;
  readonly every: number;
}

/** The angles of the cuts, degrees, as they were made. */
export function unevenCuts(
  cuts: readonly number[],
  { uneven, unevenArcSeconds, ratio, every }: Uneven,
): readonly number[] {
  if (uneven === 'ripple') return withRipple(cuts, ratio, unevenArcSeconds);
  if (uneven === 'every-few') return withBacklash(cuts, every, -unevenArcSeconds);
  return cuts;
}
