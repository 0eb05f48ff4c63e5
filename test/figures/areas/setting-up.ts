import type { FigureValues } from './values.js';

export const settingUp: FigureValues = {};
