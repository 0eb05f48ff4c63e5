import type { Calculation } from '../calculation.js';
import { chordal } from './chordal.js';
import { cutterNumber } from './cutter-number.js';
import { involuteFunction } from './function.js';
import { overPins } from './over-pins.js';
import { span } from './span.js';
import { undercut } from './undercut.js';
import { wheel } from './wheel.js';

/** Involute wheels, in the order of the trade. */
export const involute: readonly Calculation[] = [
  wheel,
  involuteFunction,
  span,
  overPins,
  undercut,
  cutterNumber,
  chordal,
];
