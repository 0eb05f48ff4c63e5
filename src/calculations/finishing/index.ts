import type { Calculation } from '../calculation.js';

/** Finishing, in the order of the trade. */
export const finishing: readonly Calculation[] = [];
