import { movementForAngle } from '../../geometry/dividing/angle.js';
import { nearestByCounting, secondsPast } from '../../handbook/dividing/movement-trial.js';
import { formatAngle } from '../../units/angle.js';
import { calculation } from '../calculation.js';
import { spacesInWords } from '../moves.js';
import { remembered } from '../remembered.js';
import { decimals } from '../working.js';
import { exactAngle, thousandthsIn, turnOf } from './exact-angle.js';
import { byCounting, circle, circles, holes, ratio, turns } from './givens.js';

interface AngleGiven {
  readonly angle: number;
  readonly ratio: number;
  readonly circles: readonly number[];
}

/** The nearest movement counted out. */
const counted = remembered((g: AngleGiven) => {
  const { top, bottom } = turnOf(g.angle);
  const [nearest] = nearestByCounting(top * BigInt(g.ratio), bottom, g.circles);
  if (!nearest) throw new RangeError('no circle');
  return nearest;
});

/** Minutes and seconds, unless that would round it. */
const inWords = (degrees: number): string =>
  thousandthsIn(degrees) === undefined ? `${degrees}°` : formatAngle(degrees, 3).replace('.000', '');

/** 7° 30′ read as 7.3°. */
const asDecimal = (degrees: number): number => {
  const whole = Math.floor(degrees);
  return whole + 0.6 * (degrees - whole);
};

export const angle = calculation({
  name: 'dividing.angle',
  title: 'Angular indexing',
  given: { angle: exactAngle, ratio, circles },
  found: {
    turns,
    holes,
    circle,
    errorArcSeconds: { symbol: 'E', unit: '″', name: 'error of the angle, above 0 too far' },
    exact: { unit: '', name: 'exact' },
  },
  work: (g) => movementForAngle(turnOf(g.angle), g.ratio, g.circles),
  proofs: [
    { of: 'turns', source: byCounting, value: (g) => counted(g).turns },
    { of: 'holes', source: byCounting, value: (g) => counted(g).holes },
    { of: 'circle', source: byCounting, value: (g) => counted(g).circle },
    {
      of: 'errorArcSeconds',
      source: byCounting,
      value: (g) => secondsPast(counted(g), g.ratio),
      within: 1e-9,
    },
    { of: 'exact', source: byCounting, value: (g) => counted(g).past === 0n },
  ],
  working: (g, found) => [
    {
      say: `One turn of the crank is 360° ÷ ${g.ratio} = ${decimals(360 / g.ratio, 6)}°; one space on the ${found.circle}-hole circle is ${formatAngle(360 / g.ratio / found.circle, 2)}.`,
    },
    {
      say: `${inWords(g.angle)} is ${found.exact ? '' : 'nearly '}${spacesInWords(found.turns, found.holes)} on the ${found.circle}-hole circle${found.exact ? ', exactly' : ''}.`,
    },
    'E = 3600*(360*(w + k/H)/R - A)',
  ],
  slips: (g, found) => ({
    fencePost: {
      of: 'holes',
      formula: 'k + 1',
      says: 'Count spaces. The hole the pin is in is nought, not one.',
    },
    // In whole turns a wrong way often comes to the same.
    ...(Math.floor(g.angle / g.ratio) !== found.turns && {
      divided: {
        of: 'turns',
        formula: 'floor(A/R)',
        says: 'You divided the angle by the ratio. Divide it by what one turn moves, 360° over the ratio.',
      },
    }),
    ...(Math.floor((asDecimal(g.angle) * g.ratio) / 360) !== found.turns && {
      asDecimal: {
        of: 'turns',
        formula: 'floor((floor(A) + 0.6*(A - floor(A)))*R/360)',
        says: 'You read the minutes as decimals of a degree: there are 60 of them to a degree.',
      },
    }),
  }),
});
