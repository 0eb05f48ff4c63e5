import type { Calculation } from '../calculation.js';

/** Screws, in the order of the trade. */
export const screws: readonly Calculation[] = [];
