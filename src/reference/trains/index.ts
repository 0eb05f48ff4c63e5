import { motionWork } from './motion-work.js';
import { trains } from './trains.js';

export const trainSheets = [trains, motionWork];
