import type { AnyFigure } from '../../figure.js';

export const dividingFigures: readonly AnyFigure[] = [];
