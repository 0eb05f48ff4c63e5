import { settingsByTrial } from '../../handbook/dividing/counting.js';
import type { Citation } from '../../handbook/record.js';
import { remembered } from '../remembered.js';

/** What simple indexing is given. */
export interface IndexGiven {
  readonly divisions: number;
  readonly ratio: number;
  readonly circles: readonly number[];
}

export const byTrial: Citation = {
  work: 'derived',
  at: 'every hole tried: divisions × movement = ratio, in whole spaces',
};

export const trial = remembered((g: IndexGiven) => settingsByTrial(g.divisions, g.ratio, g.circles));

export const possibleByTrial = {
  of: 'possible',
  source: byTrial,
  value: (g: IndexGiven) => trial(g).settings.length > 0,
} as const;

/** Why no circle serves. */
export const noCircle = ({ divisions, ratio }: IndexGiven): string =>
  `${ratio}/${divisions} of a turn comes out in whole spaces on none of these circles`;
