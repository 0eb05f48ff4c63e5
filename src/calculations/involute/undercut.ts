import { undercutLimit } from '../../geometry/involute/undercut.js';
import { leastTeethByTrial } from '../../handbook/involute/trials.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { angle, number, orElse } from '../quantity.js';
import { radians } from './gearing.js';

/** A limit so near to a whole number is whole, as 8 at 30° is. */
const isWhole = (limit: number): boolean => Math.abs(limit - Math.round(limit)) < 1e-9;

export const undercut = calculation({
  name: 'involute.undercut',
  title: 'Fewest teeth that a rack does not undercut',
  given: {
    pressureAngle: orElse(angle('A', 'pressure angle', 5, 45), 20),
    addendumFactor: orElse(number('f', 'addendum in modules', 'modules', 0.1, 2), 1),
  },
  found: {
    limit: { symbol: 'z_0', unit: '', name: 'limit, before it is rounded up' },
    leastTeeth: { symbol: 'z', unit: 'teeth', name: 'fewest teeth without undercut' },
  },
  work: (g) => {
    const limit = undercutLimit(radians(g.pressureAngle), g.addendumFactor);
    return { limit, leastTeeth: isWhole(limit) ? Math.round(limit) : Math.ceil(limit) };
  },
  proofs: [
    { of: 'limit', formula: 'undercut-limit' },
    {
      of: 'leastTeeth',
      source: derived('count by count, the foot of the line of action against the reach of the rack'),
      value: (g) => leastTeethByTrial(g.pressureAngle, g.addendumFactor),
    },
  ],
  working: (_, { limit }) => [
    'z_0 = 2*f/sind(A)^2',
    ...(isWhole(limit)
      ? [
          'z = round(z_0)',
          { say: 'The limit is a whole number of teeth: with one tooth fewer the rack cuts in.' },
        ]
      : [
          'z = ceil(z_0)',
          { say: 'Any part of a tooth is rounded up: one tooth fewer is undercut a little.' },
        ]),
  ],
  slips: (_, found) => ({
    ...(isWhole(found.limit)
      ? {}
      : {
          roundedDown: {
            of: 'leastTeeth',
            formula: 'floor(z_0)',
            says: 'Rounded down, as many books print it: a trace of undercut is left. Round up.',
          },
        }),
    notSquared: {
      of: 'leastTeeth',
      formula: 'ceil(2*f/sind(A))',
      says: 'The sine is squared: once for the flank’s slope, once for the foot of the line of action.',
    },
    radius: {
      of: 'leastTeeth',
      formula: 'ceil(f/sind(A)^2)',
      says: 'The 2 is missing: the module times half the teeth is the radius.',
    },
    tangent: {
      of: 'leastTeeth',
      formula: 'ceil(2*f/tand(A)^2)',
      says: 'You used the tangent; it is the sine, squared.',
    },
  }),
});
