import type { FigureValues } from './values.js';

export const screws: FigureValues = {};
