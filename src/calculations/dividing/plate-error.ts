import { InputError } from '../../diagnostics/errors.js';
import { plateErrorAtWheel } from '../../geometry/dividing/plate-error.js';
import { wheelByStepping } from '../../handbook/dividing/plate-walk.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { length, orElse } from '../quantity.js';
import { ratio } from './givens.js';

const bySteps = derived('a plate marked out with one hole moved, and the pin stepped into it');

export const plateError = calculation({
  name: 'dividing.plateError',
  title: 'What a misplaced hole or notch does at the wheel',
  given: {
    holeError: length('f', 'hole out of place, along its circle', 0.0001, 10),
    plateRadius: length('r', 'radius of the circle of holes', 1, 1000),
    ratio: orElse(ratio, 1),
    wheelRadius: length('q', 'radius of the wheel', 0.5, 2000),
  },
  found: {
    angleArcSeconds: { symbol: 'g', unit: '″', name: 'angle that the wheel is out' },
    atRim: { symbol: 'u', unit: 'mm', name: 'the same along its rim' },
  },
  refuse: (g) => {
    if (g.holeError > g.plateRadius / 2)
      throw new InputError(
        'holeError',
        g.holeError,
        `at most half the radius of the circle, ${g.plateRadius / 2} mm`,
      );
  },
  work: (g) => plateErrorAtWheel(g.holeError, g.plateRadius, g.ratio, g.wheelRadius),
  proofs: [
    { of: 'angleArcSeconds', formula: 'plate-error' },
    {
      of: 'angleArcSeconds',
      source: bySteps,
      value: (g) => (648_000 / Math.PI) * wheelByStepping(g.holeError, g.plateRadius, g.ratio),
      within: 1e-9,
    },
    { of: 'atRim', formula: 'plate-error-at-rim' },
    {
      of: 'atRim',
      source: bySteps,
      value: (g) => g.wheelRadius * wheelByStepping(g.holeError, g.plateRadius, g.ratio),
      within: (g) => 1e-14 * g.wheelRadius,
    },
  ],
  working: (g) => [
    {
      say:
        g.ratio === 1
          ? 'The plate is on the spindle: the wheel is turned wrong by as much as the plate.'
          : `Through the worm: the wheel is turned wrong by 1/${g.ratio} of what the plate is.`,
    },
    'g = 648000*f/(pi*r*R)',
    'u = f*q/(r*R)',
  ],
  slips: (g) => ({
    diameter: {
      of: 'angleArcSeconds',
      formula: '648000*f/(pi*2*r*R)',
      says: 'You used the diameter of the circle; the angle is the error over its radius.',
    },
    wheelDiameter: {
      of: 'atRim',
      formula: 'f*2*q/(r*R)',
      says: 'You used the wheel’s diameter; an error along the rim is as the radius.',
    },
    ...(g.ratio === 1
      ? {}
      : {
          multiplied: {
            of: 'angleArcSeconds',
            formula: '648000*f*R/(pi*r)',
            says: 'You multiplied by the ratio. The worm divides the plate’s errors.',
          },
          direct: {
            of: 'angleArcSeconds',
            formula: '648000*f/(pi*r)',
            says: 'That is at the plate. The worm divides it before it comes to the wheel.',
          },
        }),
    ...(g.wheelRadius === g.plateRadius && g.ratio === 1
      ? {}
      : {
          asDrilled: {
            of: 'atRim',
            formula: 'f',
            says: 'That is the error at the plate; at the wheel it is as the radii are.',
          },
        }),
  }),
});
