import type { AnyFigure } from '../../figure.js';
import { chord } from './chord.js';
import { dovetailRollers } from './dovetail-rollers.js';
import { holeCircle } from './hole-circle.js';
import { polygonFlats } from './polygon-flats.js';
import { sineBar } from './sine-bar.js';
import { tailstockSetOver } from './tailstock-set-over.js';
import { taper } from './taper.js';
import { triangle } from './triangle.js';

export const trigonometryFigures: readonly AnyFigure[] = [
  triangle,
  chord,
  holeCircle,
  taper,
  tailstockSetOver,
  sineBar,
  dovetailRollers,
  polygonFlats,
];
