import { InputError } from '../../diagnostics/errors.js';
import {
  type DifferentialSetting,
  differentialSettings,
  idlersFor,
  LARGEST_RATIO,
} from '../../geometry/dividing/differential.js';
import { prepareGears } from '../../geometry/dividing/gears.js';
import { valueOf } from '../../geometry/fractions.js';
import { commonGears, commonGearsSource, isCommonSet } from '../../handbook/dividing/change-gears.js';
import { differentialByTrial, putsRight } from '../../handbook/dividing/differential-trial.js';
import { derived } from '../../handbook/record.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { spacesInWords } from '../moves.js';
import { counts, orElse } from '../quantity.js';
import { remembered } from '../remembered.js';
import { inWords } from './fraction-in-words.js';
import { circles, divisions, MOST_SETTINGS, possible, ratio, reason } from './givens.js';

interface DifferentialGiven {
  readonly divisions: number;
  readonly ratio: number;
  readonly circles: readonly number[];
  readonly gears: readonly number[];
}

/** More different wheels than this would keep the reader waiting for every train of four to be tried. */
const MOST_DIFFERENT = 30;

const everyTrain = derived('every train of two and of four wheels tried, both ways round');

/** The gears looked through, so that the set usually supplied is never taken for a club's own. */
const gearSetOf = ({ gears }: DifferentialGiven): string =>
  inOrder(gears) === inOrder(commonGears) ? USUAL : OWN;

const inOrder = (gears: readonly number[]): string => [...gears].sort((a, b) => a - b).join();
const USUAL = `the usual set ${commonGears.join(', ')}`;
const OWN = 'the gears given';

const none = (g: DifferentialGiven): string =>
  `no movement on these circles is put right by ${gearSetOf(g)}, within ${LARGEST_RATIO} turns of the plate for one of the work`;

/** A setting as the catalogue words it. The first of each list of gears is on the spindle, or on the plate. */
function worded(setting: DifferentialSetting) {
  const { approximate, turns, holes, circle, gearRatio, train } = setting;
  const idlers = idlersFor(setting);
  const way = gearRatio.numerator > 0 ? 'same way as the crank' : 'opposite way to the crank';
  return {
    approximate,
    turns,
    holes,
    circle,
    spindleGears: train.drivers,
    plateGears: train.driven,
    gearRatio,
    idlers,
    sense: `${way}, ${idlers === 0 ? 'no idler' : counted(idlers, 'idler')}`,
  };
}

type Worded = ReturnType<typeof worded>;

function gearsInWords({ spindleGears, plateGears, sense }: Worded): string {
  const [spindle, second] = spindleGears;
  const [plate, first] = plateGears;
  const stud = second === undefined ? '' : `, ${first} driven and ${second} driving on the stud`;
  return `Gears: ${spindle} on the spindle${stud}, ${plate} on the worm shaft that turns the plate; plate ${sense}.`;
}

/** `Check: 53 × 24/33 + 16/11 = 40.` */
function checkOf(
  { turns, holes, circle, gearRatio }: Worded,
  { divisions, ratio }: DifferentialGiven,
): string {
  const spaces = `${holes}/${circle}`;
  const move = holes === 0 ? `${turns}` : turns === 0 ? spaces : `(${turns} + ${spaces})`;
  const sign = gearRatio.numerator > 0 ? '+' : '−';
  const plate = inWords({ ...gearRatio, numerator: Math.abs(gearRatio.numerator) });
  return `Check: ${divisions} × ${move} ${sign} ${plate} = ${ratio}.`;
}

const trial = remembered((g: DifferentialGiven) => differentialByTrial(g, LARGEST_RATIO));

/** When no gears are given the set usually supplied with the head is used, and every answer says so. */
export const differential = calculation({
  name: 'dividing.differential',
  title: 'Differential indexing',
  given: { divisions, ratio, circles, gears: orElse(counts('change gears', 10, 200, 60), commonGears) },
  found: {
    possible,
    approximate: { symbol: 'A', unit: '', name: 'approximate count, by the simplest setting' },
    plateTurns: {
      symbol: 'x',
      unit: 'turns',
      name: 'turns of the plate for one of the work, below 0 against the crank',
    },
    count: { symbol: 'q', unit: '', name: 'settings in all' },
    settings: { unit: '', name: `movement and gears, the simplest ${MOST_SETTINGS}` },
    gearSet: { unit: '', name: 'gears looked through' },
    reason,
  },
  refuse: (g) => {
    if (new Set(g.gears).size > MOST_DIFFERENT)
      throw new InputError('gears', g.gears, `at most ${MOST_DIFFERENT} different wheels`);
  },
  work: (g) => {
    const { count, settings } = differentialSettings(
      g.divisions,
      g.ratio,
      g.circles,
      prepareGears(g.gears),
      MOST_SETTINGS,
    );
    const [simplest] = settings;
    const gearSet = gearSetOf(g);
    if (!simplest)
      return {
        possible: false,
        approximate: null,
        plateTurns: null,
        count,
        settings: [],
        gearSet,
        reason: none(g),
      };
    return {
      possible: true,
      approximate: valueOf(simplest.approximate),
      plateTurns: valueOf(simplest.gearRatio),
      count,
      settings: settings.map(worded),
      gearSet,
    };
  },
  proofs: [
    { of: 'possible', source: everyTrain, value: (g) => trial(g).count > 0 },
    {
      of: 'approximate',
      source: everyTrain,
      value: (g) => trial(g).simplest?.approximate ?? null,
      within: (g) => 1e-9 * g.divisions * g.ratio,
    },
    {
      of: 'plateTurns',
      source: everyTrain,
      value: (g) => {
        const { simplest } = trial(g);
        return simplest ? simplest.top / simplest.bottom : null;
      },
      within: 1e-9,
    },
    { of: 'count', source: everyTrain, value: (g) => trial(g).count },
    {
      of: 'settings',
      source: derived('crank and plate put back together: one turn of the work, by wheels from this set'),
      measure: {
        name: 'settings that are right when put back',
        of: (settings: readonly Worded[], g) => settings.filter((setting) => putsRight(setting, g)).length,
      },
      value: (g) => Math.min(MOST_SETTINGS, trial(g).count),
    },
    { of: 'gearSet', source: commonGearsSource, value: ({ gears }) => (isCommonSet(gears) ? USUAL : OWN) },
  ],
  working: (g, found) => {
    const [simplest] = found.settings;
    if (!simplest) return [{ say: `Not possible: ${none(g)}.` }];
    const { turns, holes, circle } = simplest;
    return [
      { say: `Movement: ${spacesInWords(turns, holes)} on the ${circle}-hole circle.` },
      `A = R/(${turns} + ${holes}/${circle})`,
      'x = R*(A - N)/A',
      { say: `With ${found.gearSet}. ${gearsInWords(simplest)}` },
      { say: checkOf(simplest, g) },
      { say: 'Turn the crank and look: if the plate runs the wrong way, use one idler more or fewer.' },
    ];
  },
  slips: (_, found) =>
    found.possible
      ? {
          swapped: {
            of: 'plateTurns',
            formula: 'R*(N - A)/A',
            says: 'You took N − A. The sign says which way the plate turns: it is A − N.',
          },
          noRatio: {
            of: 'plateTurns',
            formula: '(A - N)/A',
            says: 'You left out the ratio of the head: the plate must make up so much for every turn of the crank.',
          },
          byN: {
            of: 'plateTurns',
            formula: 'R*(A - N)/N',
            says: 'You divided by the count you want. The crank moves by the approximate count.',
          },
        }
      : {},
});
