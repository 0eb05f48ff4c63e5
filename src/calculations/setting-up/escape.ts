import { setOverForFace } from '../../geometry/setting-up/centring.js';
import { calculation, type Slip } from '../calculation.js';
import { mm } from '../found.js';
import { angle, length } from '../quantity.js';
import { RADIANS, toldApart } from '../slips.js';

const slips: Readonly<Record<string, Slip>> = {
  diameter: {
    of: 'offset',
    formula: 'D*sind(A)',
    says: 'You used the diameter as the radius: the tip is only half of it from the centre.',
  },
  tangent: {
    of: 'offset',
    formula: 'D/2*tand(A)',
    says: 'You used the tangent. The radius is the long side of the triangle, so it is the sine.',
  },
  cosine: {
    of: 'offset',
    formula: 'D/2*cosd(A)',
    says: 'You used the cosine: that is how far the face runs before it comes nearest to the centre.',
  },
  radians: { of: 'offset', formula: 'D/2*sin(A)', says: RADIANS },
  degrees: {
    of: 'offset',
    formula: 'D/2*A',
    says: 'You multiplied by the angle in degrees. It is the sine of the angle.',
  },
};

export const escapeOffset = calculation({
  name: 'escape.offset',
  title: 'Set-over of the cutter for a sloping escape-wheel face',
  given: {
    diameter: length('D', 'diameter over the tips', 1, 1000),
    faceAngle: angle('A', 'slope of the face from the radius', 0, 45),
  },
  found: { offset: mm('b', 'set-over of the cutter’s edge from the centre') },
  work: (g) => ({ offset: setOverForFace(g.diameter, g.faceAngle) }),
  proofs: [{ of: 'offset', formula: 'escape-offset' }],
  working: ['b = D/2*sind(A)'],
  slips: (g, found) => toldApart(slips, found, { D: g.diameter, A: g.faceAngle }),
});
