import { InputError } from '../../diagnostics/errors.js';
import { type MotionWorkBounds, motionWorks } from '../../geometry/trains/motion-work.js';
import { derived } from '../../handbook/record.js';
import { motionWorksByTrial } from '../../handbook/trains/counting.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { orElse, type Quantity, whole } from '../quantity.js';
import { remembered } from '../remembered.js';

/** The longest list given; the count is of all. */
const MOST = 500;

/** Yes or no, as a truth value or in words. */
const yesNo = (name: string): Quantity<boolean> => ({
  name,
  unit: '',
  accepts: 'true or false, or yes or no',
  read: (raw) =>
    raw === true || raw === 'true' || raw === 'yes'
      ? true
      : raw === false || raw === 'false' || raw === 'no'
        ? false
        : undefined,
});

const byTrial = derived('every hour wheel and minute wheel tried, and the pinions fitted to them');

const trial = remembered((g: MotionWorkBounds) => motionWorksByTrial(g));

/** Why there is none: nothing comes to the ratio, or only what stands on two modules. */
function none(g: MotionWorkBounds): string {
  const uneven = g.equalCentres ? motionWorks({ ...g, equalCentres: false }).length : 0;
  return uneven === 0
    ? 'no wheels and pinions within these bounds come to the ratio exactly'
    : `none on equal centres; with two modules there ${uneven === 1 ? 'is' : 'are'} ${counted(uneven, 'set')}`;
}

export const motionWork = calculation({
  name: 'train.motionWork',
  title: 'Motion work for the dial',
  given: {
    ratio: orElse(whole('i', 'turns of the minute hand for one of the hour hand', 1, 100), 12),
    minLeaves: orElse(whole('n_1', 'fewest leaves of a pinion', 4, 60), 6),
    maxLeaves: orElse(whole('n_2', 'most leaves of a pinion', 4, 60), 24),
    maxTeeth: orElse(whole('z_2', 'most teeth of a wheel', 6, 200), 80),
    equalCentres: orElse(yesNo('both pairs of one module, on the same centres'), true),
  },
  found: {
    possible: { unit: '', name: 'possible' },
    count: { unit: '', name: 'sets within the bounds' },
    sets: { unit: '', name: `sets, the ${MOST} with fewest teeth at most` },
    reason: { unit: '', name: 'why there is none' },
  },
  refuse: (g) => {
    if (g.maxLeaves < g.minLeaves)
      throw new InputError('maxLeaves', g.maxLeaves, `at least the fewest leaves, ${g.minLeaves}`);
    if (g.maxTeeth < g.minLeaves)
      throw new InputError('maxTeeth', g.maxTeeth, `at least the fewest leaves, ${g.minLeaves}`);
  },
  work: (g) => {
    const all = motionWorks(g);
    const possible = all.length > 0;
    return { possible, count: all.length, sets: all.slice(0, MOST), ...(!possible && { reason: none(g) }) };
  },
  proofs: [
    { of: 'possible', source: byTrial, value: (g) => trial(g).length > 0 },
    { of: 'count', source: byTrial, value: (g) => trial(g).length },
    { of: 'sets', source: byTrial, value: (g) => trial(g).slice(0, MOST) },
  ],
  working: (g, found) => [
    {
      say: `Minute wheel over cannon pinion, times hour wheel over minute pinion, must be ${g.ratio} exactly; neither pair gears up.`,
    },
    {
      say: g.equalCentres
        ? 'Both pairs stand on the same two arbors. With one module for both, each pair has as many teeth in all.'
        : 'The pairs may differ in teeth: their modules must then differ, to stand on the same two arbors.',
    },
    ...(found.possible
      ? [
          {
            say: `${counted(found.count, 'set')}, fewest teeth first${found.count > MOST ? `; the first ${MOST} are listed` : ''}.`,
          },
          ...found.sets.slice(0, 3).map((set) => ({
            say: `${set.minuteWheel}/${set.cannonPinion} × ${set.hourWheel}/${set.minutePinion} = ${g.ratio}.`,
          })),
        ]
      : [{ say: `Not possible: ${found.reason}.` }]),
  ],
});
