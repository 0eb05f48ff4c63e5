import { InputError } from '../../diagnostics/errors.js';
import { findTrains, type Train, type TrainBounds } from '../../geometry/trains/find.js';
import { derived } from '../../handbook/record.js';
import { rowsThatHold } from '../../handbook/trains/put-back.js';
import { cheapestTotals, totalsOf, trainsAtEachTotal } from '../../handbook/trains/table.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { exact, orElse, whole } from '../quantity.js';
import { remembered } from '../remembered.js';
import { refuseTooMany, whyNone } from './bounds.js';
import { inWords } from './ratio-in-words.js';

/** The longest list given; the count is of all. */
const MOST = 500;

/** The handbook's table. */
const table = remembered((g: TrainBounds) => trainsAtEachTotal(g));

const countedInTable = (g: TrainBounds): number => [...table(g).values()].reduce((a, b) => a + b, 0);

const byTable = derived('every set of wheels tabled by its product, and looked up for every set of pinions');

interface FoundTrains {
  readonly possible: boolean;
  readonly count: number;
  readonly trains: readonly Train[];
  readonly reason?: string;
}

const given = {
  ratio: exact('turns of the last pinion for one of the first wheel', '', 1_000_000),
  stages: whole('s', 'pairs of a wheel and a pinion', 1, 4),
  minLeaves: orElse(whole('n_1', 'fewest leaves', 4, 200), 6),
  maxLeaves: orElse(whole('n_2', 'most leaves', 4, 200), 16),
  minTeeth: orElse(whole('z_1', 'fewest teeth', 6, 1000), 24),
  maxTeeth: orElse(whole('z_2', 'most teeth', 6, 1000), 120),
  tolerance: orElse(whole('e', 'largest error, parts per million (12 is a second a day)', 0, 1000), 0),
};

export const find = calculation<typeof given, FoundTrains>({
  name: 'train.find',
  title: 'Every train of a ratio, fewest teeth first',
  given,
  found: {
    possible: { unit: '', name: 'possible' },
    count: { unit: '', name: 'trains within the bounds' },
    trains: { unit: '', name: `trains, the ${MOST} with fewest teeth at most; error in parts per million` },
    reason: { unit: '', name: 'why there is none' },
  },
  refuse: (g) => {
    if (g.maxLeaves < g.minLeaves)
      throw new InputError('maxLeaves', g.maxLeaves, `at least the fewest leaves, ${g.minLeaves}`);
    if (g.maxTeeth < g.minTeeth)
      throw new InputError('maxTeeth', g.maxTeeth, `at least the fewest teeth, ${g.minTeeth}`);
    if (Math.max(g.ratio.numerator, g.ratio.denominator) > 1e12)
      throw new InputError('ratio', inWords(g.ratio), 'a ratio with 12 figures at most above and below');
    refuseTooMany(g);
  },
  work: (g) => {
    const { count, trains } = findTrains(g, MOST);
    const possible = count > 0;
    return { possible, count, trains, ...(!possible && { reason: whyNone(g) }) };
  },
  proofs: [
    { of: 'possible', source: byTable, value: (g) => table(g).size > 0 },
    { of: 'count', source: byTable, value: countedInTable },
    {
      of: 'trains',
      source: byTable,
      measure: {
        name: 'total of teeth and how many trains have it, in the order of the list',
        of: totalsOf,
      },
      value: (g) => cheapestTotals(table(g), MOST),
    },
    {
      of: 'trains',
      source: derived('every row multiplied out again'),
      measure: {
        name: 'rows within bounds, true to the ratio, and none twice',
        of: rowsThatHold,
      },
      value: (g) => Math.min(MOST, countedInTable(g)),
    },
  ],
  working: (g, found) => [
    {
      say: `The wheels multiplied must come to ${inWords(g.ratio)} times the pinions multiplied${g.tolerance === 0 ? ', exactly' : `, within ${counted(g.tolerance, 'part')} per million`}.`,
    },
    ...(found.possible
      ? [
          {
            say: `${counted(found.count, 'train')} in ${counted(g.stages, 'stage')}, fewest teeth first${found.count > MOST ? `; the first ${MOST} are listed` : ''}.`,
          },
          ...found.trains.slice(0, 3).map(({ wheels, pinions, error }) => ({
            say: `${wheels.join(' × ')} over ${pinions.join(' × ')}${error === 0 ? '' : `, ${Number(Math.abs(error).toPrecision(3))} parts per million ${error > 0 ? 'fast' : 'slow'}`}.`,
          })),
          { say: 'Any wheel may drive any of the pinions: the ratio is the same.' },
        ]
      : [{ say: `Not possible: ${whyNone(g)}.` }]),
  ],
});
