import type { Pair } from './rolling.js';

/** What strikes first when a pair is brought together. */
export type Strike = 'wheel tips' | 'leaf tips';

/** Less than this is dust of reckoning, modules. */
const DUST = 1e-9;

/**
 * Whether a tip strikes the bottom of the other's spaces.
 *
 * @param pinionDedendum depth of the pinion's root circle below its pitch circle, modules
 */
export function strikes(pair: Pair, pinionDedendum: number): Strike | undefined {
  const [wheel, pinion] = [pair.teeth / 2, pair.leaves / 2];
  if (wheel + pair.addendum + (pinion - pinionDedendum) > pair.centres + DUST) return 'wheel tips';
  if (pinion + pair.leaf.addendum + (wheel - pair.dedendum) > pair.centres + DUST) return 'leaf tips';
  return undefined;
}
