import type { AnyFigure } from '../../figure.js';
import { chordalToothFigure } from './chordal-tooth.js';
import { involuteOverPins } from './involute-over-pins.js';
import { involuteSpan } from './involute-span.js';
import { involuteString } from './involute-string.js';
import { involuteToothFigure } from './involute-tooth.js';
import { involuteUndercut } from './involute-undercut.js';

export const involuteFigures: readonly AnyFigure[] = [
  involuteToothFigure,
  involuteString,
  involuteUndercut,
  involuteSpan,
  involuteOverPins,
  chordalToothFigure,
];
