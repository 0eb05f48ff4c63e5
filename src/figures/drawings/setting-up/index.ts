import type { AnyFigure } from '../../figure.js';
import { centreFromTouch } from './centre-from-touch.js';
import { cutterHeight } from './cutter-height.js';
import { escapeOffset } from './escape-offset.js';
import { halfTurnTest } from './half-turn-test.js';
import { leaningTeeth } from './leaning-teeth.js';
import { micrometer } from './micrometer.js';
import { vernier } from './vernier.js';

/** Figures of setting up, in the order of the trade. */
export const settingUpFigures: readonly AnyFigure[] = [
  cutterHeight,
  centreFromTouch,
  halfTurnTest,
  leaningTeeth,
  escapeOffset,
  vernier,
  micrometer,
];
