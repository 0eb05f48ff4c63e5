import type { AnyFigure } from '../../figure.js';
import { closingGap } from './closing-gap.js';
import { compoundMoves } from './compound-moves.js';
import { differentialGears } from './differential-gears.js';
import { directPlate } from './direct-plate.js';
import { holeError } from './hole-error.js';

/** Dividing. */
export const dividingFigures: readonly AnyFigure[] = [
  directPlate,
  compoundMoves,
  differentialGears,
  closingGap,
  holeError,
];
