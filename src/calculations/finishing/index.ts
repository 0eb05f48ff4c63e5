import type { Calculation } from '../calculation.js';
import { crossingLayout } from './crossing.js';
import { flatness, mass } from './disc.js';
import { crossingPegs } from './pegs.js';
import { printScale } from './print-scale.js';
import { crossingRule } from './proportions.js';

/** Finishing, in the order of the trade. */
export const finishing: readonly Calculation[] = [
  crossingRule,
  crossingLayout,
  crossingPegs,
  printScale,
  mass,
  flatness,
];
