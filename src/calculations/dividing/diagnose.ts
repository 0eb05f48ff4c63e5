import { InputError } from '../../diagnostics/errors.js';
import { type Diagnosis, diagnoseCount, diagnoseGap } from '../../geometry/dividing/diagnosis.js';
import { countByTrial, gapByTrial } from '../../handbook/dividing/diagnosis-trial.js';
import { derived } from '../../handbook/record.js';
import { counted } from '../../units/words.js';
import { calculation, type Step } from '../calculation.js';
import { angle, optional, whole } from '../quantity.js';
import { remembered } from '../remembered.js';
import { divisions, ratio } from './givens.js';
import { type Meant, reasonFor } from './slip-in-words.js';

const everyMove = derived('every movement of whole spaces tried, the wheel cut space by space and looked at');

const trial = remembered((g: Meant) =>
  g.teethCut === undefined ? gapByTrial(g, g.closingGapAngle ?? 0) : countByTrial(g, g.teethCut),
);

const teethCut = whole('T', 'teeth that come round', 2, 20_000);
const closingGapAngle = angle('G', 'gap left after the last move, below 0 run past', -360, 360);

function readings(g: Meant): Diagnosis[] {
  const full = g.ratio * g.circle;
  const meant = { divisions: g.divisions, full, intended: g.intendedHoles };
  return g.teethCut === undefined
    ? diagnoseGap(meant, Math.round(((g.closingGapAngle ?? 0) * full) / 360))
    : diagnoseCount(meant, g.teethCut);
}

type Candidate = Omit<Diagnosis, 'gapSpaces'> & {
  /** None when the moves go round more than twice: nobody sees such a gap. */
  readonly closingGapAngle: number | null;
  readonly reason: string;
};

interface Diagnosed {
  readonly holesMoved: number | null;
  readonly onceSpaces: number | null;
  readonly teethCut: number | null;
  readonly closingGapAngle: number | null;
  readonly candidates: readonly Candidate[];
  readonly reason: string;
}

const given = {
  divisions,
  ratio,
  circle: whole('H', 'circle used', 2, 1000),
  intendedHoles: whole('k_i', 'spaces meant for each move, whole turns among them', 1, 500_000),
  teethCut: optional(teethCut),
  closingGapAngle: optional(closingGapAngle),
};

/** From the gap to the move, or to the one slip j that is left when equal moves are taken off; then the teeth. */
function byGap(g: Meant, found: Diagnosed): Step[] {
  const gap = Math.round(((found.closingGapAngle ?? 0) * g.ratio * g.circle) / 360);
  const seen = {
    say: `The ${gap < 0 ? 'overlap' : 'gap'}, to the nearest space, is ${counted(Math.abs(gap), 'space')} of the crank.`,
  };
  if (found.onceSpaces === 0) return [seen, 'k = R*H*(360 - G)/(360*N)', 'T = floor(R*H/k)'];
  const split = `All the moves together do not share out evenly: ${g.divisions} moves of ${found.holesMoved} spaces, and at one of them j spaces too many, or below 0 too few.`;
  return [seen, { say: split }, 'j = R*H*(360 - G)/360 - N*k', 'T = floor((R*H - j)/k)'];
}

/** From the move that makes the count to the gap it would have left. */
const byCount = (found: Diagnosed): Step[] => [
  { say: `Moves of ${found.holesMoved} spaces go round in ${found.teethCut} whole teeth.` },
  ...(found.closingGapAngle === null ? [] : ['G = 360 - 360*N*k/(R*H)']),
];

export const diagnose = calculation<typeof given, Diagnosed>({
  name: 'dividing.diagnose',
  title: 'From a spoiled wheel back to the slip',
  given,
  found: {
    holesMoved: { symbol: 'k', unit: 'spaces', name: 'spaces really moved each time' },
    onceSpaces: { symbol: 'j', unit: 'spaces', name: 'spaces too many at one move, below 0 too few' },
    teethCut: { symbol: 'T', unit: 'teeth', name: teethCut.name },
    closingGapAngle: { symbol: 'G', unit: '°', name: closingGapAngle.name },
    candidates: { unit: '', name: 'every reading, the likeliest first' },
    reason: { unit: '', name: 'what went wrong, as it seems' },
  },
  refuse: (g) => {
    if ((g.teethCut === undefined) === (g.closingGapAngle === undefined))
      throw new InputError('teethCut', g.teethCut, 'one of teethCut and closingGapAngle, not both');
    const full = g.ratio * g.circle;
    const right = full / g.divisions;
    const [least, most] = [Math.ceil(right / 2), Math.floor(Math.min(2 * right, full / 2))];
    if (most < 1)
      throw new InputError('circle', g.circle, 'a circle that has a space to each division or two');
    if (g.intendedHoles < least || g.intendedHoles > most)
      throw new InputError(
        'intendedHoles',
        g.intendedHoles,
        `from ${least} to ${most} spaces, within a factor of 2 of ratio × circle ÷ divisions`,
      );
  },
  work: (g) => {
    const full = g.ratio * g.circle;
    const candidates = readings(g).map(({ gapSpaces, ...reading }) => ({
      ...reading,
      closingGapAngle: gapSpaces < -full ? null : (360 * gapSpaces) / full,
      reason: reasonFor(reading, g),
    }));
    const [likeliest] = candidates;
    if (!likeliest)
      return {
        holesMoved: null,
        onceSpaces: null,
        teethCut: g.teethCut ?? null,
        closingGapAngle: null,
        candidates,
        reason:
          'no steady move of whole spaces on this circle makes so many: a move was made twice or left out, or the count is wrong',
      };
    return { ...likeliest, candidates };
  },
  proofs: [
    { of: 'holesMoved', source: everyMove, value: (g) => trial(g)[0]?.holesMoved ?? null },
    { of: 'onceSpaces', source: everyMove, value: (g) => trial(g)[0]?.onceSpaces ?? null },
    { of: 'teethCut', source: everyMove, value: (g) => trial(g)[0]?.teethCut ?? g.teethCut ?? null },
    {
      of: 'closingGapAngle',
      source: everyMove,
      value: (g) => trial(g)[0]?.closingGapAngle ?? null,
      within: 1e-9,
    },
    {
      of: 'candidates',
      source: everyMove,
      measure: {
        name: 'spaces, teeth and gap of each reading',
        of: (candidates: readonly Candidate[]) => candidates.map(({ reason: _, ...numbers }) => numbers),
      },
      value: trial,
      within: 1e-9,
    },
  ],
  working: (g, found) => {
    const reason = { say: `${found.reason.charAt(0).toUpperCase()}${found.reason.slice(1)}.` };
    if (found.holesMoved === null) return [reason];
    const full = `One turn of the work is ${g.ratio} × ${g.circle} = ${g.ratio * g.circle} spaces.`;
    return [{ say: full }, ...(g.teethCut === undefined ? byGap(g, found) : byCount(found)), reason];
  },
  slips: (g, found) => {
    if (found.holesMoved === null || found.holesMoved === g.intendedHoles || found.onceSpaces !== 0)
      return {};
    return {
      allAtOnce: {
        of: 'holesMoved',
        formula: 'k_i - G*R*H/360',
        says: 'You put the whole gap down to one move. It is shared between all of them.',
      },
      wrongWay: {
        of: 'holesMoved',
        formula: '2*k_i - k',
        says: 'The wrong way: a gap is left when the move is short, an overlap when it is long.',
      },
      intended: {
        of: 'holesMoved',
        formula: 'k_i',
        says: 'That is the move that was meant; the wheel says it was not the one made.',
      },
    };
  },
});
