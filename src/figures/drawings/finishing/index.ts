import type { AnyFigure } from '../../figure.js';
import { crossingLayout } from './crossing-layout.js';
import { crossingPegs } from './crossing-pegs.js';
import { crossingWindow } from './crossing-window.js';
import { flatnessBands } from './flatness-bands.js';
import { shrunkPattern } from './shrunk-pattern.js';
import { wheelWobble } from './wheel-wobble.js';

/** Figures of finishing, in the order of the trade. */
export const finishingFigures: readonly AnyFigure[] = [
  crossingWindow,
  crossingLayout,
  crossingPegs,
  flatnessBands,
  wheelWobble,
  shrunkPattern,
];
