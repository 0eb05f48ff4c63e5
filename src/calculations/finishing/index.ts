import type { Calculation } from '../calculation.js';
import { crossingLayout } from './crossing.js';
import { flatness, mass } from './disc.js';
import { crossingPegs } from './pegs.js';

/** Finishing, in the order of the trade. */
export const finishing: readonly Calculation[] = [crossingLayout, crossingPegs, mass, flatness];
