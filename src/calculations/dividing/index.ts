import type { Calculation } from '../calculation.js';
import { angle } from './angle.js';
import { closing } from './closing.js';
import { compound } from './compound.js';
import { diagnose } from './diagnose.js';
import { differential } from './differential.js';
import { direct } from './direct.js';
import { nearest } from './nearest.js';
import { plateError } from './plate-error.js';
import { sectorArms } from './sector-arms.js';
import { simple } from './simple.js';
import { tally } from './tally.js';

/** Dividing, in the order of the trade. */
export const dividing: readonly Calculation[] = [
  direct,
  simple,
  angle,
  compound,
  differential,
  nearest,
  tally,
  closing,
  diagnose,
  sectorArms,
  plateError,
];
