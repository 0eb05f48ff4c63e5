import type { AnyFigure } from '../../figure.js';
import { meshDepthFigure } from './mesh-depth.js';
import { meshPositions } from './mesh-positions.js';
import { pinionOutlineFigure } from './pinion-outline.js';
import { toothCurve } from './tooth-curve.js';
import { toothSizes } from './tooth-sizes.js';
import { wheelOutlineFigure } from './wheel-outline.js';

export const wheelsFigures: readonly AnyFigure[] = [
  wheelOutlineFigure,
  toothSizes,
  toothCurve,
  pinionOutlineFigure,
  meshPositions,
  meshDepthFigure,
];
