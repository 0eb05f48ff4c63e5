import { meshAction } from '../../geometry/wheels/action.js';
import { rolling } from '../../geometry/wheels/rolling.js';
import { touchingPitchCircles } from '../../geometry/wheels/wheel.js';
import { derived } from '../../handbook/record.js';
import { type MeshByLaw, meshByLaw } from '../../handbook/wheels/law-of-gearing.js';
import { calculation } from '../calculation.js';
import { choice, length, optional, orElse } from '../quantity.js';
import { leaves, module, teeth } from './gearing.js';
import { reasons, standingByLaw, standingOf, unfair } from './mesh.js';
import { addendumNames, type PairGiven, pairOf, refuseFarCentres } from './pair.js';
import { refuseLargePinion } from './wheels.js';

/** Places of one pitch at which the ratio is told. */
const PLACES = 48;

interface ActionGiven extends PairGiven {
  readonly centreDistance?: number | undefined;
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;

const centresOf = (g: ActionGiven): number =>
  g.centreDistance ?? touchingPitchCircles(g.module, g.teeth, g.leaves);

/** What is found, of contact by either route. */
function told(g: ActionGiven, first: number, last: number, ratios: MeshByLaw['ratios']) {
  const right = g.teeth / g.leaves;
  return {
    largestRatioErrorPercent: Math.max(...ratios.map(({ ratio }) => 100 * Math.abs(ratio / right - 1))),
    approachAngle: degrees(Math.max(0, -first)),
    recessAngle: degrees(Math.max(0, last)),
    ratioCurve: ratios.map(({ wheel, ratio }) => ({ angle: degrees(wheel), ratio })),
  };
}

type Told = ReturnType<typeof told>;

/** What is found; of a pair that does not mesh only why. */
type Found = Partial<Told> & {
  readonly ratio: number;
  readonly possible: boolean;
  readonly reason?: string;
};

/** By the law of gearing; nothing where the two do not mesh. Kept for the proofs of one working, which ask in turn. */
const byLaw = new WeakMap<object, Told | undefined>();

function lawOf(g: ActionGiven): Told | undefined {
  if (!byLaw.has(g)) {
    const mesh =
      'shake' in standingByLaw(g, centresOf(g)) ? meshByLaw(pairOf(g, centresOf(g)), PLACES) : undefined;
    const fair = mesh && !unfair(g.leaves, mesh);
    byLaw.set(g, fair ? told(g, mesh.first, mesh.last, mesh.ratios) : undefined);
  }
  return byLaw.get(g);
}

const law = derived(
  'law of gearing: the common normal at each contact, found by Newton’s method, cuts the line of centres in the ratio of speeds',
);

export const meshActionOf = calculation({
  name: 'mesh.action',
  title: 'A wheel and pinion rolled through mesh',
  given: {
    teeth,
    leaves,
    module,
    centreDistance: optional(length('a', 'centre distance', 0.1, 20_000)),
    addendum: orElse(
      choice('addendum of the wheel: as cut, or up to the points', addendumNames),
      'practical',
    ),
  },
  found: {
    ratio: { symbol: 'i', unit: '', name: 'ratio wanted: turns of the pinion to one of the wheel' },
    largestRatioErrorPercent: {
      symbol: 'e',
      unit: '%',
      name: `largest error of the ratio at ${PLACES} places of one pitch`,
    },
    approachAngle: {
      symbol: 'A_a',
      unit: '°',
      name: 'contact before the line of centres, angle of the wheel',
    },
    recessAngle: { symbol: 'A_r', unit: '°', name: 'contact after the line of centres, angle of the wheel' },
    ratioCurve: { unit: '', name: 'ratio by the wheel’s angle over one pitch, from the first contact' },
    possible: { unit: '', name: 'possible' },
    reason: { unit: '', name: 'why they do not mesh' },
  },
  refuse: (g) => {
    refuseLargePinion(g);
    refuseFarCentres('centreDistance', g, g.centreDistance);
  },
  work: (g): Found => {
    const ratio = g.teeth / g.leaves;
    const stands = standingOf(g, centresOf(g));
    if ('reason' in stands) return { ratio, possible: false, reason: stands.reason };
    const action = meshAction(rolling(pairOf(g, centresOf(g))), PLACES);
    const reason = action ? unfair(g.leaves, { ...action, ratios: action.curve }) : reasons.apart;
    if (!action || reason) return { ratio, possible: false, ...(reason && { reason }) };
    return { ratio, ...told(g, action.first, action.last, action.curve), possible: true };
  },
  proofs: [
    { of: 'ratio', formula: 'mesh-ratio' },
    { of: 'possible', source: law, value: (g) => lawOf(g) !== undefined },
    {
      of: 'largestRatioErrorPercent',
      source: law,
      within: 0.02,
      value: (g) => lawOf(g)?.largestRatioErrorPercent,
    },
    { of: 'approachAngle', source: law, within: 1e-4, value: (g) => lawOf(g)?.approachAngle },
    { of: 'recessAngle', source: law, within: 1e-4, value: (g) => lawOf(g)?.recessAngle },
    {
      of: 'ratioCurve',
      source: law,
      within: (g) => Math.max(1e-4, (2e-4 * g.teeth) / g.leaves),
      value: (g) => lawOf(g)?.ratioCurve,
    },
  ],
  working: (g, found) => [
    'i = z/n',
    {
      say: `Wheel with ${g.addendum === 'practical' ? 'its practical addendum, 0.95 of the theoretical' : 'the full theoretical addendum, its teeth pointed'}; centres ${g.centreDistance === undefined ? 'where the pitch circles touch' : 'as given'}.`,
    },
    {
      say: 'Turn the wheel a little at a time. At each place the pinion stands where its leaf just touches a tooth; how far it moves for each move of the wheel is the ratio there.',
    },
    { say: found.possible ? contactInWords(found) : `They do not mesh: ${found.reason}.` },
  ],
  slips: {
    turnedRound: {
      of: 'ratio',
      formula: 'n/z',
      says: 'That is the wheel’s share of a turn for one turn of the pinion.',
    },
    sum: {
      of: 'ratio',
      formula: '(z + n)/n',
      says: 'You added the leaves to the teeth; only the teeth count.',
    },
  },
});

function contactInWords({ approachAngle = 0, recessAngle = 0, largestRatioErrorPercent = 0 }: Found): string {
  return (
    `A tooth touches its leaf ${approachAngle.toFixed(2)}° of the wheel before the line of centres and ` +
    `${recessAngle.toFixed(2)}° after it; the ratio is never out by more than ${largestRatioErrorPercent.toFixed(2)} %.`
  );
}
