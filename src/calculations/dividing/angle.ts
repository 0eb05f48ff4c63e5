import { movementForAngle } from '../../geometry/dividing/angle.js';
import { nearestByCounting } from '../../handbook/dividing/movement-trial.js';
import { formatAngle } from '../../units/angle.js';
import { calculation } from '../calculation.js';
import { spacesInWords } from '../moves.js';
import { decimals } from '../working.js';
import { byCounting, circle, circles, exactAngle, holes, ratio, thousandthsOf, turns } from './givens.js';

interface AngleGiven {
  readonly angle: number;
  readonly ratio: number;
  readonly circles: readonly number[];
}

/** The nearest movement counted out, in thousandths of a second. */
function counted(g: AngleGiven) {
  const [nearest] = nearestByCounting(thousandthsOf(g.angle) * g.ratio, 1_296_000_000, g.circles);
  if (!nearest) throw new RangeError('no circle');
  return nearest;
}

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
  work: (g) => movementForAngle(thousandthsOf(g.angle), g.ratio, g.circles),
  proofs: [
    { of: 'turns', source: byCounting, value: (g) => counted(g).turns },
    { of: 'holes', source: byCounting, value: (g) => counted(g).holes },
    { of: 'circle', source: byCounting, value: (g) => counted(g).circle },
    {
      of: 'errorArcSeconds',
      source: byCounting,
      // A space of the circle is 1 296 000″ over ratio × circle.
      value: (g) => {
        const { past, parts, circle } = counted(g);
        return ((past / parts) * 1_296_000) / (g.ratio * circle);
      },
      within: 1e-9,
    },
    { of: 'exact', source: byCounting, value: (g) => counted(g).past === 0 },
  ],
  working: (g, found) => [
    {
      say: `One turn of the crank is 360° ÷ ${g.ratio} = ${decimals(360 / g.ratio, 6)}°; one space on the ${found.circle}-hole circle is ${formatAngle(360 / g.ratio / found.circle, 2)}.`,
    },
    {
      say: `${formatAngle(g.angle, 3).replace('.000', '')} is ${found.exact ? '' : 'nearly '}${spacesInWords(found.turns, found.holes)} on the ${found.circle}-hole circle${found.exact ? ', exactly' : ''}.`,
    },
    'E = 3600*(360*(w + k/H)/R - A)',
  ],
  slips: (g, found) => ({
    fencePost: {
      of: 'holes',
      formula: 'k + 1',
      says: 'Count spaces. The hole the pin is in is nought, not one.',
    },
    divided: {
      of: 'turns',
      formula: 'A/R',
      says: 'You divided the angle by the ratio. Divide it by what one turn moves, 360° over the ratio.',
    },
    ...(Number.isInteger(g.angle) || found.turns === 0
      ? {}
      : {
          asDecimal: {
            of: 'turns',
            formula: '(floor(A) + 0.6*(A - floor(A)))*R/360',
            says: 'You read the minutes as decimals of a degree: there are 60 of them to a degree.',
          },
        }),
  }),
});
