import type { AnyFigure } from '../../figure.js';

export const screwsFigures: readonly AnyFigure[] = [];
