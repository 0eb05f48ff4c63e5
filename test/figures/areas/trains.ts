import type { FigureValues } from './values.js';

export const trains: FigureValues = {};
