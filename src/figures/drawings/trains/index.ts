import type { AnyFigure } from '../../figure.js';

export const trainsFigures: readonly AnyFigure[] = [];
