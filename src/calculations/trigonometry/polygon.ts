import { flatsOnRound } from '../../geometry/trigonometry/polygon.js';
import { acrossFlats } from '../../handbook/trigonometry/by-case.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, whole } from '../quantity.js';

const even = (sides: number): boolean => sides % 2 === 0;

export const polygonFlats = calculation({
  name: 'polygon.flats',
  title: 'Square, hexagon and other flats from the round',
  given: {
    diameter: length('D', 'diameter of the round, which is across the corners', 0.01, 5000),
    sides: whole('N', 'sides', 3, 100),
  },
  found: {
    acrossFlats: mm('AF', 'across flats; with odd sides, from a flat to the corner opposite'),
    depthOfFlat: mm('t', 'depth of each flat below the round'),
    flatWidth: mm('b', 'width of each flat'),
  },
  work: (g) => flatsOnRound(g.diameter, g.sides),
  proofs: [
    {
      of: 'acrossFlats',
      source: (g) => acrossFlats(g.diameter, g.sides).source,
      within: (g) => 1e-12 * g.diameter,
      value: (g) => acrossFlats(g.diameter, g.sides).value,
    },
    { of: 'depthOfFlat', formula: 'depth-of-flat' },
    { of: 'flatWidth', formula: 'flat-width' },
  ],
  working: (g) => [
    ...(even(g.sides)
      ? ['AF = D*cosd(180/N)']
      : [
          {
            say: 'With odd sides a corner lies opposite each flat: radius to the flat, and radius to the corner.',
          },
          'AF = D/2*(1 + cosd(180/N))',
        ]),
    't = D/2*(1 - cosd(180/N))',
    'b = D*sind(180/N)',
  ],
  slips: (g) => ({
    divided: {
      of: 'acrossFlats',
      formula: 'D/cosd(180/N)',
      says: 'You divided by the cosine: that is the round needed for those flats. Flats are less than the round.',
    },
    wholeAngle: {
      of: 'acrossFlats',
      formula: 'D*cosd(360/N)',
      says: 'You used the angle of a whole side: half of it reaches from the corner to the middle of the flat.',
    },
    radius: {
      of: 'acrossFlats',
      formula: 'D/2*cosd(180/N)',
      says: 'That is from the centre to one flat; the micrometer goes across.',
    },
    ...(even(g.sides)
      ? {}
      : {
          noOpposite: {
            of: 'acrossFlats',
            formula: 'D*cosd(180/N)',
            says: 'With odd sides there is no flat opposite: a corner is.',
          },
        }),
    bothFlats: {
      of: 'depthOfFlat',
      formula: 'D*(1 - cosd(180/N))',
      says: 'That is what two flats take off the diameter; each takes half.',
    },
    toFlat: {
      of: 'depthOfFlat',
      formula: 'D/2*cosd(180/N)',
      says: 'That is from the centre to the flat; the depth is what is left of the radius.',
    },
    half: { of: 'flatWidth', formula: 'D/2*sind(180/N)', says: 'That is half of the flat.' },
  }),
});
