import type { Calculation } from '../calculation.js';
import { hump, overTravel, passes, spindleSpeed, stack } from './setup.js';

/** Setting up and cutting, in the order of the trade. */
export const settingUp: readonly Calculation[] = [overTravel, hump, stack, passes, spindleSpeed];
