import { crankAfter, simpleIndexing } from '../../geometry/dividing/indexing.js';
import { crankByStepping } from '../../handbook/dividing/counting.js';
import { derived } from '../../handbook/record.js';
import { formatAngle } from '../../units/angle.js';
import { calculation } from '../calculation.js';
import { whole } from '../quantity.js';
import { byTrial, noCircle, possibleByTrial, trial } from './by-trial.js';
import { circles, possible, ratio, reason } from './givens.js';

export const tally = calculation({
  name: 'dividing.tally',
  title: 'Tally of crank readings, with quarter marks',
  given: { divisions: whole('N', 'divisions', 2, 2000), ratio, circles },
  found: {
    possible,
    circle: { unit: 'holes', name: 'circle used' },
    rows: { unit: '', name: 'reading after each division' },
    reason,
  },
  work: (g) => {
    const setting = simpleIndexing(g.divisions, g.ratio, g.circles).settings[0];
    if (!setting) return { possible: false, circle: null, rows: [], reason: noCircle(g) };
    const rows = Array.from({ length: g.divisions + 1 }, (_, tooth) => ({
      tooth,
      ...crankAfter(tooth, g.divisions, g.ratio, setting.circle),
      degrees: (360 * tooth) / g.divisions,
      angle: formatAngle((360 * tooth) / g.divisions),
      quarter: (4 * tooth) % g.divisions === 0,
    }));
    return { possible: true, circle: setting.circle, rows };
  },
  proofs: [
    possibleByTrial,
    {
      of: 'circle',
      source: byTrial,
      value: (g) => trial(g).settings[0]?.circle ?? null,
    },
    {
      of: 'rows',
      source: derived('the crank moved one division at a time, spaces counted and carried'),
      value: (g) => {
        const { turns, settings } = trial(g);
        const first = settings[0];
        const places = first ? crankByStepping(g.divisions, turns, first.holes, first.circle) : [];
        return places.map((place, tooth) => {
          // The angle back from where the crank stands, in one division, so that it is rounded once.
          const spaces = place.turns * (first?.circle ?? 0) + place.holes;
          const degrees = (360 * spaces) / (g.ratio * (first?.circle ?? 1));
          return {
            tooth,
            ...place,
            degrees,
            angle: formatAngle(degrees),
            quarter: [0, 1, 2, 3, 4].some((quarter) => 4 * tooth === quarter * g.divisions),
          };
        });
      },
    },
  ],
  working: (_, found) => [
    {
      say: found.possible
        ? `Readings on the ${found.circle}-hole circle, added from the start and never rounded.`
        : 'Not possible on these circles.',
    },
  ],
});
