import type { AnyFigure } from '../../figure.js';
import { changeWheelsFigure } from './change-wheels.js';
import { tappingDrillFigure } from './tapping-drill.js';
import { threadFormFigure } from './thread-form.js';
import { threeWires } from './three-wires.js';

export const screwsFigures: readonly AnyFigure[] = [
  threadFormFigure,
  tappingDrillFigure,
  threeWires,
  changeWheelsFigure,
];
