import type { Calculation } from '../calculation.js';

/** Trains and time, in the order of the trade. */
export const trains: readonly Calculation[] = [];
