import type { Sensible } from './sensible.js';

export const screws: Sensible = {};
