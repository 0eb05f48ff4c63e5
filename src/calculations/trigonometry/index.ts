import type { Calculation } from '../calculation.js';
import { circleChord } from './circle.js';
import { dovetailOverRollers } from './dovetail.js';
import { expansionLength } from './expansion.js';
import { holesCircle } from './holes.js';
import { polygonFlats } from './polygon.js';
import { sineBarHeight } from './sine-bar.js';
import { taperAngles, taperSetOver } from './tapers.js';
import { triangleSolve } from './triangle.js';

/** Workshop trigonometry, in the order of the trade. */
export const trigonometry: readonly Calculation[] = [
  triangleSolve,
  circleChord,
  holesCircle,
  taperAngles,
  taperSetOver,
  sineBarHeight,
  dovetailOverRollers,
  polygonFlats,
  expansionLength,
];
