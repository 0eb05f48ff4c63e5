import { inv } from '../../geometry/involute/involute.js';
import { involuteByArea } from '../../handbook/involute/involute-tables.js';
import { calculation } from '../calculation.js';
import { angle } from '../quantity.js';
import { radians } from './gearing.js';

export const involuteFunction = calculation({
  name: 'involute.function',
  title: 'Involute of an angle',
  given: { angle: angle('A', 'angle', 0, 80) },
  found: { inv: { symbol: 'inv_A', unit: '', name: 'involute, in radians' } },
  work: (g) => ({ inv: inv(radians(g.angle)) }),
  proofs: [
    {
      of: 'inv',
      source: { work: 'derived', at: 'area under tan² from 0 to the angle, by Simpson’s rule' },
      within: 1e-8,
      value: (g) => involuteByArea(g.angle),
    },
  ],
  working: [{ say: 'The angle is taken in radians where it stands alone.' }, 'inv_A = tand(A) - A*pi/180'],
  slips: {
    degrees: {
      of: 'inv',
      formula: 'tand(A) - A',
      says: 'You took away degrees. Outside the tangent the angle is in radians: times π/180.',
    },
    radianTangent: {
      of: 'inv',
      formula: 'tan(A) - A*pi/180',
      says: 'The tangent was taken with the calculator set to radians.',
    },
    bothRadians: {
      of: 'inv',
      formula: 'tan(A) - A',
      says: 'You put degrees into a calculator set to radians.',
    },
    tangentAlone: {
      of: 'inv',
      formula: 'tand(A)',
      says: 'That is the tangent: take the angle away from it.',
    },
  },
});
