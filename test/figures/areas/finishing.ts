import type { FigureValues } from './values.js';

export const finishing: FigureValues = {};
