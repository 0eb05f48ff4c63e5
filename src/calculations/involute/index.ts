import type { Calculation } from '../calculation.js';
import { cutterNumber } from './cutter-number.js';

/** Involute wheels, in the order of the trade. */
export const involute: readonly Calculation[] = [cutterNumber];
