import type { AnyFigure } from '../../figure.js';

export const wheelsFigures: readonly AnyFigure[] = [];
