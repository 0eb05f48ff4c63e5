import { InputError } from '../../diagnostics/errors.js';
import { overRollers } from '../../geometry/trigonometry/dovetail.js';
import { dovetailCorners, dovetailMeasurement } from '../../handbook/trigonometry/by-case.js';
import { calculation, type Slip } from '../calculation.js';
import { mm } from '../found.js';
import { angle, choice, length } from '../quantity.js';
import { toldApart } from '../slips.js';

const KINDS = ['male', 'female'] as const;

interface Given {
  readonly kind: (typeof KINDS)[number];
  readonly width: number;
  readonly angle: number;
  readonly rollerDiameter: number;
  readonly depth: number;
}

const geometry = (g: Given) => overRollers(g.kind, g.width, g.angle, g.rollerDiameter, g.depth);

function refuse(g: Given): void {
  const { cornerWidth, measurement, touch } = geometry(g);
  if (cornerWidth <= 0)
    throw new InputError('depth', g.depth, 'a depth at which the sides do not run into one another');
  // Touching just at the edge of the slope still counts.
  if (touch > g.depth * (1 + 1e-9))
    throw new InputError(
      'rollerDiameter',
      g.rollerDiameter,
      'rollers small enough to touch the slope below its edge',
    );
  if (measurement < 0)
    throw new InputError('rollerDiameter', g.rollerDiameter, 'rollers that lie side by side in the groove');
}

export const dovetailOverRollers = calculation({
  name: 'dovetail.overRollers',
  title: 'Dovetail measured with rollers',
  given: {
    width: length('W', 'width of the open face: a male’s widest, a female’s mouth', 0.1, 2000),
    angle: angle('A', 'angle between the slope and the floor', 30, 85),
    rollerDiameter: length('D', 'diameter of the rollers', 0.1, 200),
    depth: length('h', 'height of the dovetail', 0.1, 500),
    kind: choice('male (over the rollers) or female (between them)', KINDS),
  },
  found: {
    measurement: mm('M', 'measurement over the rollers (male) or between them (female)'),
    cornerWidth: mm('w', 'width from corner to corner: a male’s narrow width, a female’s wide one'),
  },
  refuse,
  work: (g) => {
    const { measurement, cornerWidth } = geometry(g);
    return { measurement, cornerWidth };
  },
  proofs: [
    {
      of: 'measurement',
      source: (g) => dovetailMeasurement(g).source,
      within: (g) => 1e-11 * (g.width + g.depth + g.rollerDiameter),
      value: (g) => dovetailMeasurement(g).value,
    },
    {
      of: 'cornerWidth',
      source: (g) => dovetailCorners(g).source,
      within: (g) => 1e-11 * (g.width + g.depth),
      value: (g) => dovetailCorners(g).value,
    },
  ],
  working: (g) => {
    const [slopes, rollers] = signs(g.kind);
    return [
      { say: 'The slope runs in or out by h/tan A on each side.' },
      `w = W ${slopes} 2*h/tand(A)`,
      {
        say: 'A roller lies in each corner; its centre lies on the line that halves the corner; add half a roller beyond.',
      },
      `M = w ${rollers} D*(1 + 1/tand(A/2))`,
    ];
  },
  slips: (g, found) =>
    toldApart(dovetailSlips(g.kind), found, {
      W: g.width,
      A: g.angle,
      D: g.rollerDiameter,
      h: g.depth,
      w: found.cornerWidth,
    }),
});

/** Signs of the slopes and of the rollers: the two kinds are each other’s contrary. */
const signs = (kind: Given['kind']) => (kind === 'male' ? (['-', '+'] as const) : (['+', '-'] as const));

/** Wrong ways for one kind. */
function dovetailSlips(kind: Given['kind']): Record<string, Slip> {
  const [slopes, rollers] = signs(kind);
  return {
    tangent: {
      of: 'measurement',
      formula: `w ${rollers} D*(1 + tand(A/2))`,
      says: 'You multiplied by the tangent of the half angle: divide by it.',
    },
    wholeAngle: {
      of: 'measurement',
      formula: `w ${rollers} D*(1 + 1/tand(A))`,
      says: 'You used the whole angle: the roller’s centre lies on the line that halves the corner.',
    },
    oneRoller: {
      of: 'measurement',
      formula: `w ${rollers} D/2*(1 + 1/tand(A/2))`,
      says: 'You allowed for one roller; there is one in each corner.',
    },
    toCentres: {
      of: 'measurement',
      formula: `w ${rollers} D/tand(A/2)`,
      says: 'That is between the centres of the rollers; half a roller lies beyond each.',
    },
    openFace: {
      of: 'measurement',
      formula: `W ${rollers} D*(1 + 1/tand(A/2))`,
      says: 'You started from the open face: the rollers lie in the corners at the floor.',
    },
    contrary: {
      of: 'cornerWidth',
      formula: `W ${rollers} 2*h/tand(A)`,
      says: 'The slope runs the other way: a male is narrow at the floor, a female wide.',
    },
    oneSide: { of: 'cornerWidth', formula: `W ${slopes} h/tand(A)`, says: 'There is a slope on each side.' },
    halfAngle: {
      of: 'cornerWidth',
      formula: `W ${slopes} 2*h*tand(A/2)`,
      says: 'That rule is right at 60° only; at any other angle divide by tan A.',
    },
  };
}
