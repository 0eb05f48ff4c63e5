import type { AnyFigure } from '../../figure.js';
import { benchSign } from './bench-sign.js';

export const safetyFigures: readonly AnyFigure[] = [benchSign];
