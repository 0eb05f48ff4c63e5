import type { FigureValues } from './values.js';

export const cutting: FigureValues = {};
