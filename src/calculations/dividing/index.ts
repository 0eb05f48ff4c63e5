import type { Calculation } from '../calculation.js';
import { sectorArms, simple, tally } from './simple.js';

/** Dividing, in the order of the trade. */
export const dividing: readonly Calculation[] = [simple, tally, sectorArms];
