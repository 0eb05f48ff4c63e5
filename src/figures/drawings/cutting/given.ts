import { z } from 'zod';
import { count, length, toothModule, word } from '../../given.js';

const arcSeconds = () => z.number().min(-100_000).max(100_000).describe('arc seconds, −100000 to 100000');
const set = (most: number) => z.number().min(-most).max(most).describe(`a length in mm, −${most} to ${most}`);

/** What a figure of a wheel that was cut is given, as `cut.simulate` has it. */
export const cutGiven = {
  teeth: count(12, 400),
  leaves: count(5, 100),
  module: toothModule(),
  steps: count(4, 500).optional(),
  stepErrorArcSeconds: arcSeconds().default(0),
  slipAt: count(1, 499).optional(),
  slipArcSeconds: arcSeconds().optional(),
  slipPutBack: word('no', 'yes').default('no'),
  offset: set(2).default(0),
  depthError: set(2).default(0),
  eccentricity: length(0, 4).default(0),
  cutterModule: toothModule().optional(),
  blankDiameter: length(1, 2000).optional(),
  depthForm: word('2.95', '3.38', '2.45').default('2.95'),
};
