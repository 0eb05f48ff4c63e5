import type { Calculation } from '../calculation.js';
import { centreError, centreFromTouch, cutterHeight } from './centring.js';
import { escapeOffset } from './escape.js';
import { scaleReading } from './reading.js';
import { hump, overTravel, passes, spindleSpeed, stack } from './setup.js';
import { sizeConvert } from './sizes.js';
import { feed, surfaceSpeed, toothFrequency } from './speed.js';
import { wheelTime } from './time.js';

/** Setting up and cutting, in the order of the trade. */
export const settingUp: readonly Calculation[] = [
  sizeConvert,
  scaleReading,
  cutterHeight,
  centreFromTouch,
  centreError,
  overTravel,
  hump,
  stack,
  passes,
  spindleSpeed,
  surfaceSpeed,
  feed,
  wheelTime,
  toothFrequency,
  escapeOffset,
];
