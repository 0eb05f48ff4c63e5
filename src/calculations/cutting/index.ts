import type { Calculation } from '../calculation.js';
import { cutterForm } from './cutter-form.js';
import { simulate } from './simulate.js';

/** The cutter's form and the wheel it cuts. */
export const cutting: readonly Calculation[] = [cutterForm, simulate];
