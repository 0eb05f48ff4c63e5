import type { AnyFigure } from '../../figure.js';

export const finishingFigures: readonly AnyFigure[] = [];
