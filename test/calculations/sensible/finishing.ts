import type { Sensible } from './sensible.js';

export const finishing: Sensible = {};
