import type { FigureValues } from './values.js';

export const trigonometry: FigureValues = {};
