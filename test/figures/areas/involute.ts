import type { FigureValues } from './values.js';

export const involute: FigureValues = {};
