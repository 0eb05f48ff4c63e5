import type { Calculation } from '../calculation.js';
import { beats } from './beats.js';
import { duration } from './duration.js';
import { find } from './find.js';
import { missing } from './missing.js';
import { motionWork } from './motion-work.js';
import { pendulum } from './pendulum.js';
import { ratio } from './ratio.js';

/** Trains and time, in the order of the trade. */
export const trains: readonly Calculation[] = [ratio, beats, missing, find, motionWork, duration, pendulum];
