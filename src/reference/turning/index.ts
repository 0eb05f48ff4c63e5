import { cuttingSpeeds } from './cutting-speeds.js';
import { flats } from './flats.js';
import { fractions } from './fractions.js';
import { sineBars } from './sine-bars.js';
import { tapers } from './tapers.js';

export const turningSheets = [fractions, cuttingSpeeds, tapers, sineBars, flats];
