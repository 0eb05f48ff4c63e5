import type { AnyFigure } from '../../figure.js';

export const involuteFigures: readonly AnyFigure[] = [];
