import type { FigureValues } from './values.js';

export const dividing: FigureValues = {};
