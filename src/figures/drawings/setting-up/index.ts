import type { AnyFigure } from '../../figure.js';

export const settingUpFigures: readonly AnyFigure[] = [];
