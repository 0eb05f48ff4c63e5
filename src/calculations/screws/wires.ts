import { InputError } from '../../diagnostics/errors.js';
import { threadSizes } from '../../geometry/screws/thread.js';
import { overWires, wiresFor } from '../../geometry/screws/wires.js';
import { derived } from '../../handbook/record.js';
import { largestWire, smallestWire } from '../../handbook/screws/wire-limits.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, optional } from '../quantity.js';
import { decimals } from '../working.js';
import { shapeOf } from './forms.js';
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

const shape = (g: GivenThread) => shapeOf(g.series, threadOf(g).pitch, 'screw');
/** A limit to three decimals, on the side that is allowed. */
const inside = (limit: number, side: (value: number) => number): string => String(side(limit * 1000) / 1000);

const limits = derived('a wire level with the crests, and one that touches the flanks at their tops');

export const threadOverWires = calculation({
  name: 'thread.overWires',
  title: 'Size of a thread over three wires',
  given: { ...threadGiven, wireDiameter: optional(length('w', 'diameter of the wires', 0.01, 20)) },
  found: {
    ...threadFound,
    pitchDiameter: mm('d_2', 'pitch diameter'),
    angle: { symbol: 'A', unit: '°', name: 'angle between the flanks' },
    bestWire: mm('w_b', 'best wire'),
    smallestWire: mm('w_s', 'smallest wire that stands above the crests'),
    largestWire: mm('w_l', 'largest wire that rests on the flanks'),
    wireDiameter: mm('w', 'wire used'),
    measurement: mm('M', 'size over the wires'),
  },
  refuse: (g) => {
    refuseNoThread(g);
    if (g.wireDiameter === undefined) return;
    const { smallest, largest } = wiresFor(shape(g));
    if (g.wireDiameter < smallest || g.wireDiameter > largest)
      throw new InputError(
        'wireDiameter',
        g.wireDiameter,
        `a wire on the flanks that stands above the crests, ${inside(smallest, Math.ceil)} to ${inside(largest, Math.floor)} mm`,
      );
  },
  work: (g) => {
    const thread = threadOf(g);
    const section = shape(g);
    const { best, smallest, largest } = wiresFor(section);
    const wire = g.wireDiameter ?? best;
    return {
      ...foundOf(thread),
      pitchDiameter: threadSizes(thread.diameter, section).pitchDiameter,
      angle: section.angle,
      bestWire: best,
      smallestWire: smallest,
      largestWire: largest,
      wireDiameter: wire,
      measurement: overWires(thread.diameter, section, wire),
    };
  },
  proofs: [
    ...threadProofs,
    {
      of: 'pitchDiameter',
      source: factors,
      within: factorWithin,
      value: (g) => publishedOf(g).diameter - publishedOf(g).effective * publishedOf(g).pitch,
    },
    { of: 'angle', source: factors, value: (g) => publishedOf(g).angle },
    { of: 'bestWire', formula: 'best-wire' },
    { of: 'smallestWire', source: limits, within: factorWithin, value: (g) => smallestWire(publishedOf(g)) },
    {
      of: 'largestWire',
      source: limits,
      within: factorWithin,
      value: (g) => largestWire(g.series, publishedOf(g)),
    },
    {
      of: 'wireDiameter',
      source: derived('half a pitch over the cosine of half the angle, where no wire was given'),
      within: 1e-4,
      value: (g) => {
        const { pitch, angle } = publishedOf(g);
        return g.wireDiameter ?? pitch / 2 / Math.cos((angle * Math.PI) / 360);
      },
    },
    { of: 'measurement', formula: 'over-wires' },
  ],
  working: (g, found) => [
    {
      say: `${found.designation}: pitch diameter ${decimals(found.pitchDiameter, 4)} mm, flanks at ${found.angle}°.`,
    },
    'w_b = P_t/(2*cosd(A/2))',
    ...(g.wireDiameter === undefined ? ['w = w_b'] : []),
    'M = d_2 + w*(1 + 1/sind(A/2)) - P_t/(2*tand(A/2))',
    { say: 'Any wire serves that stands above the crests and touches the straight of the flanks:' },
    'w_s = (d - d_2 + P_t/(2*tand(A/2)))/(1 + 1/sind(A/2))',
    g.series === 'iso'
      ? 'w_l = (P_t/2 + (d - d_2)*tand(A/2))/cosd(A/2)'
      : {
          say: `up to ${decimals(found.largestWire, 4)} mm, which touches where the rounding of the crest begins.`,
        },
    {
      say: 'The slope of the thread is left out, as the tables do: a few thousandths of a millimetre on a standard thread.',
    },
  ],
  slips: (g) => ({
    bare: {
      of: 'measurement',
      formula: 'd_2 + w*(1 + 1/sind(A/2))',
      says: 'You left out the last term: the wires lie down in the grooves, not on the pitch line.',
    },
    major: {
      of: 'measurement',
      formula: 'd + w*(1 + 1/sind(A/2)) - P_t/(2*tand(A/2))',
      says: 'You started from the outside diameter; this rule starts from the pitch diameter.',
    },
    otherAngle: {
      of: 'bestWire',
      formula: g.series === 'iso' ? '0.5637*P_t' : '0.57735*P_t',
      says:
        g.series === 'iso'
          ? 'That is the factor for 55°. A metric thread is 60°.'
          : 'That is the factor for 60°. This thread has another angle.',
    },
    twoWires: {
      of: 'measurement',
      formula: 'd_2 + 2*w - P_t/(2*tand(A/2))',
      says: 'You added the wires themselves only. How far they stand out depends on the angle.',
    },
    radius: { of: 'bestWire', formula: 'w_b/2', says: 'That is the radius of the wire.' },
  }),
});
