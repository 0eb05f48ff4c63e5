import { roundingRadius } from '../../geometry/screws/profile.js';
import { threadSizes } from '../../geometry/screws/thread.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { decimals } from '../working.js';
import { formOf, shapeOf } from './forms.js';
import {
  factors,
  factorWithin,
  foundOf,
  type GivenThread,
  publishedOf,
  refuseNoThread,
  threadFound,
  threadGiven,
  threadOf,
  threadProofs,
} from './thread.js';

/** A published factor times the pitch, taken off the diameter or standing alone. */
const byFactor = <K extends string>(of: K, value: (p: ReturnType<typeof publishedOf>) => number) => ({
  of,
  source: factors,
  within: factorWithin,
  value: (g: GivenThread) => value(publishedOf(g)),
});

export const threadForm = calculation({
  name: 'thread.form',
  title: 'Form and sizes of a screw thread',
  given: threadGiven,
  found: {
    ...threadFound,
    pitchDiameter: mm('d_2', 'pitch diameter'),
    minorDiameter: mm('d_1', 'basic minor diameter'),
    depth: mm('h', 'depth of thread cut on the screw'),
    coreDiameter: mm('d_3', 'core diameter of the screw'),
    angle: { symbol: 'A', unit: '°', name: 'angle between the flanks' },
    sharpHeight: mm('H', 'height of the sharp triangle'),
    rootRadius: mm('r', 'radius at the root of the screw'),
  },
  refuse: refuseNoThread,
  work: (g) => {
    const thread = threadOf(g);
    const shape = shapeOf(g.series, thread.pitch, 'screw');
    const screw = threadSizes(thread.diameter, shape);
    return {
      ...foundOf(thread),
      pitchDiameter: screw.pitchDiameter,
      minorDiameter: threadSizes(thread.diameter, shapeOf(g.series, thread.pitch, 'basic')).rootDiameter,
      depth: screw.depth,
      coreDiameter: screw.rootDiameter,
      angle: shape.angle,
      sharpHeight: screw.sharpHeight,
      rootRadius: roundingRadius(shape.root.off, shape.angle),
    };
  },
  proofs: [
    ...threadProofs,
    byFactor('pitchDiameter', (p) => p.diameter - p.effective * p.pitch),
    byFactor('minorDiameter', (p) => p.diameter - p.minor * p.pitch),
    byFactor('depth', (p) => p.depth * p.pitch),
    byFactor('coreDiameter', (p) => p.diameter - 2 * p.depth * p.pitch),
    { of: 'angle', source: factors, value: (g) => publishedOf(g).angle },
    byFactor('sharpHeight', (p) => p.sharpHeight * p.pitch),
    byFactor('rootRadius', (p) => p.rootRadius * p.pitch),
  ],
  working: (g, found) => [
    { say: `${found.designation}: ${formOf(g.series).name}, flanks at ${found.angle}° to each other.` },
    ...(g.series === 'whitworth' || g.series === 'me'
      ? [{ say: `Pitch: 25.4 ÷ ${decimals(25.4 / found.pitch, 3)} = ${decimals(found.pitch, 5)} mm.` }]
      : []),
    'H = P_t/(2*tand(A/2))',
    ...formOf(g.series).steps,
    ...(g.series === 'iso'
      ? [{ say: 'The minor diameter is the nut’s; the screw itself is cut deeper, to its core diameter.' }]
      : []),
  ],
  slips: (g) => ({
    bothSides: {
      of: 'depth',
      formula: '2*h',
      says: 'You doubled the depth: the tool goes in on one side only.',
    },
    otherForm: {
      of: 'depth',
      formula: g.series === 'iso' ? '0.640327*P_t' : '0.613435*P_t',
      says:
        g.series === 'iso'
          ? 'You used 0.64, the Whitworth factor. A metric screw is 0.61 of its pitch deep.'
          : 'You used 0.61, the metric factor. This form has another depth.',
    },
    sharp: {
      of: 'depth',
      formula: 'H',
      says: 'That is the height of the sharp triangle. Crest and root are taken off it.',
    },
    oneSide: {
      of: 'coreDiameter',
      formula: 'd - h',
      says: 'You took the depth off once; there is a groove at each end of the diameter.',
    },
    radius: {
      of: 'pitchDiameter',
      formula: 'd_2/2',
      says: 'That is the radius; the micrometer measures diameter.',
    },
    ...(g.series === 'whitworth' || g.series === 'me'
      ? {
          perInch: {
            of: 'pitch',
            formula: '25.4/P_t',
            says: 'That is threads to the inch. The pitch is one inch divided by it.',
          },
        }
      : {}),
  }),
});
