import { InputError } from '../../diagnostics/errors.js';
import { cutOff } from '../../geometry/trigonometry/circle.js';
import { derived } from '../../handbook/record.js';
import { arcByChords, chordByHalving } from '../../handbook/trigonometry/arc.js';
import { calculation, type Slip } from '../calculation.js';
import { mm } from '../found.js';
import { angle, length, optional, whole } from '../quantity.js';
import { RADIANS, toldApart } from '../slips.js';

interface CircleGiven {
  readonly diameter: number;
  readonly divisions?: number | undefined;
  readonly angle?: number | undefined;
}

/** The angle at the centre, degrees, whichever way it is given. */
const centreAngle = (g: CircleGiven): number => g.angle ?? 360 / (g.divisions ?? 1);

/** Wrong ways to a chord. */
export const chordSlips: Readonly<Record<string, Slip>> = {
  radius: {
    of: 'chord',
    formula: 'D/2*sind(A/2)',
    says: 'You used the radius: this rule takes the diameter.',
  },
  asRadius: { of: 'chord', formula: '2*D*sind(A/2)', says: 'You used the diameter as the radius.' },
  wholeAngle: {
    of: 'chord',
    formula: 'D*sind(A)',
    says: 'You took the sine of the whole angle: the chord goes by half of it.',
  },
  tangent: { of: 'chord', formula: 'D*tand(A/2)', says: 'You used the tangent: the chord goes by the sine.' },
  arc: { of: 'chord', formula: 'pi*D*A/360', says: 'That is along the arc; dividers go straight across.' },
  radians: { of: 'chord', formula: 'D*sin(A/2)', says: RADIANS },
};

const slips: Readonly<Record<string, Slip>> = {
  ...chordSlips,
  straight: {
    of: 'arc',
    formula: 'D*sind(A/2)',
    says: 'That is the chord, straight across; the arc is longer.',
  },
  arcAsRadius: { of: 'arc', formula: '2*pi*D*A/360', says: 'You used the diameter as the radius.' },
  toChord: {
    of: 'sagitta',
    formula: 'D/2*cosd(A/2)',
    says: 'That is from the centre to the chord; the sagitta is what is left of the radius.',
  },
  sagittaAsRadius: {
    of: 'sagitta',
    formula: 'D*(1 - cosd(A/2))',
    says: 'You used the diameter as the radius.',
  },
};

export const circleChord = calculation({
  name: 'circle.chord',
  title: 'Chord, arc and sagitta',
  given: {
    diameter: length('D', 'diameter of the circle', 0.01, 10_000),
    divisions: optional(whole('N', 'divisions of the circle', 2, 10_000)),
    angle: optional(angle('A', 'angle at the centre', 0.01, 359.99)),
  },
  found: {
    angle: { symbol: 'A', unit: '°', name: 'angle at the centre' },
    chord: mm('c', 'chord, straight across'),
    arc: mm('b', 'arc, along the circle'),
    sagitta: mm('h', 'sagitta, from chord to arc'),
  },
  refuse: (g) => {
    if (g.divisions === undefined && g.angle === undefined)
      throw new InputError('divisions', undefined, 'either divisions or angle');
    if (g.divisions !== undefined && g.angle !== undefined)
      throw new InputError('angle', g.angle, 'either divisions or angle, not both');
  },
  work: (g) => ({ angle: centreAngle(g), ...cutOff(g.diameter, centreAngle(g)) }),
  proofs: [
    {
      of: 'angle',
      source: derived('21 600 minutes shared between the divisions'),
      within: 1e-12,
      value: (g) => g.angle ?? 21_600 / (g.divisions ?? 1) / 60,
    },
    {
      of: 'chord',
      source: derived('the angle halved until arc and chord are one, and the chord doubled back'),
      within: (g) => 1e-9 * g.diameter,
      value: (g) => chordByHalving(g.diameter, centreAngle(g)),
    },
    {
      of: 'arc',
      source: { work: 'huygens', at: 'arc from the chords of its halves' },
      within: (g) => 1e-10 * g.diameter,
      value: (g) => arcByChords(g.diameter, centreAngle(g)),
    },
    { of: 'sagitta', formula: 'sagitta' },
  ],
  working: (g) => [
    ...(g.divisions === undefined ? [] : ['A = 360/N']),
    'c = D*sind(A/2)',
    'b = pi*D*A/360',
    'h = D/2*(1 - cosd(A/2))',
  ],
  slips: (g, found) => toldApart(slips, found, { D: g.diameter, A: found.angle }),
});
