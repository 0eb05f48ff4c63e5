import type { AnyFigure } from '../../figure.js';

export const trigonometryFigures: readonly AnyFigure[] = [];
