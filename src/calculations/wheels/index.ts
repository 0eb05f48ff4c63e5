import type { Calculation } from '../calculation.js';
import { meshActionOf } from './mesh-action.js';
import { meshDepth } from './mesh-depth.js';
import { convert } from './modules.js';
import { pinionBlank } from './pinions.js';
import { addendumFactor, centreDistance, wheelBlank } from './wheels.js';

/** Wheels, pinions and their meshing, in the order of the trade. */
export const wheels: readonly Calculation[] = [
  convert,
  addendumFactor,
  wheelBlank,
  pinionBlank,
  centreDistance,
  meshDepth,
  meshActionOf,
];
