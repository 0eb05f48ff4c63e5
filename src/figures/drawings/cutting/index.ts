import type { AnyFigure } from '../../figure.js';

export const cuttingFigures: readonly AnyFigure[] = [];
