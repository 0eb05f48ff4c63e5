import { cutOff, type Hole, holeCircle } from '../../geometry/trigonometry/circle.js';
import { derived } from '../../handbook/record.js';
import { holesByQuadrants } from '../../handbook/trigonometry/holes.js';
import { calculation, type Slip } from '../calculation.js';
import { mm } from '../found.js';
import { angle, choice, length, orElse, whole } from '../quantity.js';
import { RADIANS, toldApart } from '../slips.js';
import { chordSlips } from './circle.js';

const DATUMS = ['centre', 'edge'] as const;

interface Given {
  readonly holes: number;
  readonly diameter: number;
  readonly startAngle: number;
  readonly datum: (typeof DATUMS)[number];
}

interface Found {
  readonly holes: readonly Hole[];
  readonly stepAngle: number;
  readonly chord: number;
  readonly secondX: number;
  readonly secondY: number;
}

/** How far each coordinate is moved, so that none is below nought: the edges touch the circle of holes. */
const shift = ({ datum, diameter }: Given): number => (datum === 'edge' ? diameter / 2 : 0);

const byQuadrants = derived('x = r cos θ and y = r sin θ, by quadrants');
const setOut = (g: Given) => holesByQuadrants(g.holes, g.diameter, g.startAngle, shift(g));
const dust = (g: Given): number => 1e-12 * Math.max(100, g.diameter);

const secondHole = <const K extends string>(of: K, along: 'x' | 'y') => ({
  of,
  source: byQuadrants,
  within: dust,
  value: (g: Given) => setOut(g)[1]?.[along],
});

/** A place, and where the hole's angle points from the centre: the two must lie the same way. */
function pointing({ x, y, angle: degrees }: Hole) {
  const radians = (degrees / 180) * Math.PI;
  return { x, y, east: Math.cos(radians), north: Math.sin(radians) };
}

export const holesCircle = calculation({
  name: 'holes.circle',
  title: 'Hole circle by coordinates',
  given: {
    holes: whole('N', 'holes', 2, 360),
    diameter: length('D', 'diameter of the hole circle', 0.01, 10_000),
    startAngle: orElse(angle('A_1', 'angle of the first hole', -360, 360), 0),
    datum: orElse(choice('where x and y are measured from', DATUMS), 'centre'),
  },
  found: {
    holes: { unit: '', name: 'x (mm), y (mm) and angle (°) of each hole' },
    stepAngle: { symbol: 'A', unit: '°', name: 'angle from hole to hole' },
    chord: mm('c', 'chord from hole to hole'),
    secondX: mm('x_2', 'x of the second hole'),
    secondY: mm('y_2', 'y of the second hole'),
  },
  work: (g): Found => {
    const centre = { x: shift(g), y: shift(g) };
    const holes = holeCircle(g.holes, g.diameter, g.startAngle, centre);
    const { x = 0, y = 0 } = holes[1] ?? {};
    const stepAngle = 360 / g.holes;
    return { holes, stepAngle, chord: cutOff(g.diameter, stepAngle).chord, secondX: x, secondY: y };
  },
  proofs: [
    {
      of: 'holes',
      source: byQuadrants,
      within: dust,
      measure: {
        name: 'x and y in mm, and where each angle points',
        of: (holes) => holes.map(pointing),
      },
      value: setOut,
    },
    {
      of: 'stepAngle',
      source: derived('21 600 minutes shared between the holes'),
      within: 1e-12,
      value: (g) => 21_600 / g.holes / 60,
    },
    { of: 'chord', formula: 'chord' },
    secondHole('secondX', 'x'),
    secondHole('secondY', 'y'),
  ],
  working: (g) => {
    const moved = g.datum === 'edge' ? 'D/2 + ' : '';
    return [
      {
        say: 'Angles run anticlockwise from three o’clock; x is to the right, y is up, seen on the face that is drilled.',
      },
      {
        say:
          g.datum === 'edge'
            ? 'Datum: x from the left edge and y from the lower edge of the square that touches the hole circle, so none is below nought.'
            : 'Datum: x and y from the centre of the circle.',
      },
      'A = 360/N',
      'c = D*sind(A/2)',
      `x_2 = ${moved}D/2*cosd(A_1 + A)`,
      `y_2 = ${moved}D/2*sind(A_1 + A)`,
    ];
  },
  slips: (g, found) => {
    const scope = { D: g.diameter, A: found.stepAngle, A_1: g.startAngle };
    return toldApart({ ...chordSlips, ...coordinateSlips(g) }, found, scope);
  },
});

/** Wrong ways to the second hole. */
function coordinateSlips(g: Given): Record<string, Slip> {
  const moved = g.datum === 'edge' ? 'D/2 + ' : '';
  const HOLE_NUMBER = 'The first hole stands at the starting angle: the second is one step on, not two.';
  const DIAMETER = 'You used the diameter: a hole stands a radius from the centre.';
  return {
    holeNumberX: { of: 'secondX', formula: `${moved}D/2*cosd(A_1 + 2*A)`, says: HOLE_NUMBER },
    holeNumberY: { of: 'secondY', formula: `${moved}D/2*sind(A_1 + 2*A)`, says: HOLE_NUMBER },
    diameterX: { of: 'secondX', formula: `${moved}D*cosd(A_1 + A)`, says: DIAMETER },
    diameterY: { of: 'secondY', formula: `${moved}D*sind(A_1 + A)`, says: DIAMETER },
    radiansX: { of: 'secondX', formula: `${moved}D/2*cos(A_1 + A)`, says: RADIANS },
    radiansY: { of: 'secondY', formula: `${moved}D/2*sin(A_1 + A)`, says: RADIANS },
    yForX: {
      of: 'secondX',
      formula: `${moved}D/2*sind(A_1 + A)`,
      says: 'That is y: x goes by the cosine of an angle from the x axis.',
    },
    xForY: {
      of: 'secondY',
      formula: `${moved}D/2*cosd(A_1 + A)`,
      says: 'That is x: y goes by the sine of an angle from the x axis.',
    },
    ...(g.datum === 'edge'
      ? {
          fromCentre: {
            of: 'secondX',
            formula: 'D/2*cosd(A_1 + A)',
            says: 'That is from the centre; the datum is the left edge, a radius further.',
          },
        }
      : {}),
  };
}
