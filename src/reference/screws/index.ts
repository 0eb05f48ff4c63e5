import { changeWheels } from './change-wheels.js';
import { tappingDrills } from './tapping-drills.js';
import { threadSizes } from './thread-sizes.js';

export const screwSheets = [changeWheels, tappingDrills, threadSizes];
