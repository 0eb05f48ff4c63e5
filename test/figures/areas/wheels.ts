import type { FigureValues } from './values.js';

export const wheels: FigureValues = {};
