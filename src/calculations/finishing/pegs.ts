import { InputError } from '../../diagnostics/errors.js';
import { type Arm, armSide, pegDiameters, taperHalfAngle } from '../../geometry/finishing/arm.js';
import { pegByHeron } from '../../handbook/finishing/pegs.js';
import { derived } from '../../handbook/record.js';
import { calculation, type Slip } from '../calculation.js';
import { length, lengths } from '../quantity.js';
import { toldApart } from '../slips.js';
import { armWidthAtHub, armWidthAtRim } from './arms.js';

interface PegsGiven {
  readonly armWidthAtRim: number;
  readonly armWidthAtHub: number;
  readonly rimRadius: number;
  readonly hubRadius: number;
  readonly pegRadii: readonly number[];
}

/** A peg thinner than this is none, mm. */
const THINNEST = 0.01;

/** As shares of the rim's radius: a shorter arm is none, and a peg further out is on no jig. */
const SHORTEST = 0.01;
const FURTHEST = 3;

const armOf = (g: PegsGiven): Arm => ({ ...g, widthAtRim: g.armWidthAtRim, widthAtHub: g.armWidthAtHub });

function refuse(g: PegsGiven): void {
  const { rimRadius, hubRadius } = g;
  if (hubRadius >= rimRadius)
    throw new InputError('hubRadius', hubRadius, `less than the rim’s radius, ${rimRadius} mm`);
  if (g.armWidthAtHub >= 2 * hubRadius)
    throw new InputError(
      'armWidthAtHub',
      g.armWidthAtHub,
      `less than the hub’s diameter, ${2 * hubRadius} mm`,
    );
  if (g.armWidthAtRim >= 2 * rimRadius)
    throw new InputError(
      'armWidthAtRim',
      g.armWidthAtRim,
      `less than the rim’s diameter, ${2 * rimRadius} mm`,
    );
  const { atHub, atRim } = armSide(armOf(g));
  if (atRim.x - atHub.x < SHORTEST * rimRadius)
    throw new InputError('hubRadius', hubRadius, 'a hub that leaves an arm of some length to the rim');
  const far = g.pegRadii.find((radius) => radius > FURTHEST * rimRadius);
  if (far !== undefined)
    throw new InputError(
      'pegRadii',
      far,
      `pegs within ${FURTHEST} times the rim’s radius, ${FURTHEST * rimRadius} mm`,
    );
  const pegs = pegDiameters(armOf(g), g.pegRadii);
  const thin = g.pegRadii.find((_, i) => (pegs[i] ?? 0) < THINNEST);
  if (thin !== undefined)
    throw new InputError('pegRadii', thin, 'pegs between which the sides of the arm have not met');
}

const slips: Readonly<Record<string, Slip>> = {
  whole: {
    of: 'taperHalfAngle',
    formula: 'atand(2*tand(a))',
    says: 'You used the whole difference of the widths. Each side leans by half of it.',
  },
  included: {
    of: 'taperHalfAngle',
    formula: '2*a',
    says: 'That is the angle between the two sides. Each leans from the middle line by half of it.',
  },
  fromCentre: {
    of: 'taperHalfAngle',
    formula: 'atand((w_h - w_r)/(2*R))',
    says: 'You measured the arm from the centre. It begins at the hub.',
  },
};

export const crossingPegs = calculation({
  name: 'crossing.pegs',
  title: 'Pegs to lay a rule along the side of an arm',
  given: {
    armWidthAtRim,
    armWidthAtHub,
    rimRadius: length('R', 'inside radius of the rim', 1, 1000),
    hubRadius: length('q', 'radius of the hub', 0.25, 500),
    pegRadii: lengths('distances of the pegs from the centre', 0.1, 2000, 20),
  },
  found: {
    pegDiameters: { unit: 'mm', name: 'diameter of each peg, on the middle line of the arm' },
    taperHalfAngle: {
      symbol: 'a',
      unit: '°',
      name: 'lean of each side from the arm’s middle line; under 0 where the arm widens to the rim',
    },
  },
  refuse,
  work: (g) => ({
    pegDiameters: pegDiameters(armOf(g), g.pegRadii),
    taperHalfAngle: taperHalfAngle(armOf(g)),
  }),
  proofs: [
    {
      of: 'pegDiameters',
      source: derived('height of the triangle from peg to side, by Heron’s rule'),
      // Heron's root halves the figures where the peg is thin.
      within: (g) => 1e-6 * Math.max(g.rimRadius, ...g.pegRadii),
      value: (g) => g.pegRadii.map((radius) => pegByHeron(g, radius)),
    },
    { of: 'taperHalfAngle', formula: 'arm-taper' },
  ],
  working: (g) => [
    'a = atand((w_h - w_r)/(sqrt(4*R^2 - w_r^2) - sqrt(4*q^2 - w_h^2)))',
    {
      say: 'The rule touches each peg, so each is as thick as twice its distance from the arm’s side, in mm:',
    },
    ...g.pegRadii.map(
      (radius, i) => `D_${i + 1} = w_h*cosd(a) + (sqrt(4*q^2 - w_h^2) - 2*${decimal(radius)})*sind(a)`,
    ),
  ],
  slips: (g, found) =>
    toldApart(slips, found, {
      R: g.rimRadius,
      w_r: g.armWidthAtRim,
      w_h: g.armWidthAtHub,
      a: found.taperHalfAngle,
    }),
});

/** A number as a formula may hold it. */
const decimal = (value: number): string => String(Number(value.toPrecision(12)));
