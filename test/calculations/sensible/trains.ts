import type { Sensible } from './sensible.js';

export const trains: Sensible = {};
