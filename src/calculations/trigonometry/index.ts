import type { Calculation } from '../calculation.js';

/** Workshop trigonometry, in the order of the trade. */
export const trigonometry: readonly Calculation[] = [];
