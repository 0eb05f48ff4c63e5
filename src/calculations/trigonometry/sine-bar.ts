import { stackHeight } from '../../geometry/trigonometry/slope.js';
import { derived } from '../../handbook/record.js';
import { sineBySeries } from '../../handbook/trigonometry/series.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { angle, length } from '../quantity.js';
import { RADIANS } from '../slips.js';

export const sineBarHeight = calculation({
  name: 'sineBar.height',
  title: 'Stack under a sine bar',
  given: {
    angle: angle('A', 'angle to set', 0.01, 89),
    centres: length('L', 'distance between the roller centres', 10, 1000),
  },
  found: { height: mm('h', 'height of the stack') },
  work: (g) => ({ height: stackHeight(g.angle, g.centres) }),
  proofs: [
    { of: 'height', formula: 'sine-bar' },
    {
      of: 'height',
      source: derived('sine of the angle by its series'),
      within: (g) => 1e-12 * g.centres,
      value: (g) => g.centres * sineBySeries(g.angle),
    },
  ],
  working: ['h = L*sind(A)'],
  slips: {
    tangent: {
      of: 'height',
      formula: 'L*tand(A)',
      says: 'You used the tangent. The bar is the long side of the triangle, so it is the sine.',
    },
    cosine: {
      of: 'height',
      formula: 'L*cosd(A)',
      says: 'That is how far the rollers stand apart along the plate.',
    },
    radians: { of: 'height', formula: 'L*sin(A)', says: RADIANS },
    halved: {
      of: 'height',
      formula: 'L*sind(A/2)',
      says: 'You halved the angle: the bar is set to the whole of it.',
    },
  },
});
