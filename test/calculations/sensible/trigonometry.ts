import type { Sensible } from './sensible.js';

export const trigonometry: Sensible = {};
