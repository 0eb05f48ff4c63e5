import { InputError } from '../../diagnostics/errors.js';
import { type Diagnosis, diagnoseCount, diagnoseGap } from '../../geometry/dividing/diagnosis.js';
import { countByTrial, gapByTrial } from '../../handbook/dividing/diagnosis-trial.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { angle, optional, whole } from '../quantity.js';
import { divisions, ratio } from './givens.js';
import { remembered } from './remembered.js';
import { reasonFor } from './slip-in-words.js';

interface DiagnoseGiven {
  readonly divisions: number;
  readonly ratio: number;
  readonly circle: number;
  readonly intendedHoles: number;
  readonly teethCut?: number | undefined;
  readonly closingGapAngle?: number | undefined;
}

const everyMove = derived('every movement of whole spaces tried, the wheel cut space by space and looked at');

const trial = remembered((g: DiagnoseGiven) =>
  g.teethCut === undefined ? gapByTrial(g, g.closingGapAngle ?? 0) : countByTrial(g, g.teethCut),
);

const teethCut = whole('T', 'teeth that come round', 2, 20_000);
const closingGapAngle = angle('G', 'gap left after the last move, below 0 run past', -360, 359.99);

function readings(g: DiagnoseGiven): Diagnosis[] {
  const full = g.ratio * g.circle;
  const meant = { divisions: g.divisions, full, intended: g.intendedHoles };
  return g.teethCut === undefined
    ? diagnoseGap(meant, Math.round(((g.closingGapAngle ?? 0) * full) / 360))
    : diagnoseCount(meant, g.teethCut);
}

type Candidate = Omit<Diagnosis, 'gapSpaces'> & {
  readonly closingGapAngle: number;
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
    if (2 * g.intendedHoles > g.ratio * g.circle)
      throw new InputError(
        'intendedHoles',
        g.intendedHoles,
        `at most half a turn of the work, ${Math.floor((g.ratio * g.circle) / 2)} spaces`,
      );
  },
  work: (g) => {
    const full = g.ratio * g.circle;
    const candidates = readings(g).map(({ gapSpaces, ...reading }) => ({
      ...reading,
      closingGapAngle: (360 * gapSpaces) / full,
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
    if (found.holesMoved === null) return [{ say: `${found.reason}.` }];
    const full = `One turn of the work is ${g.ratio} × ${g.circle} = ${g.ratio * g.circle} spaces.`;
    const steady = g.teethCut === undefined ? 'k = R*H*(360 - G)/(360*N)' : 'G = 360 - 360*N*k/(R*H)';
    return [
      { say: full },
      ...(found.onceSpaces === 0 ? [steady] : []),
      ...(g.teethCut === undefined || found.onceSpaces !== 0 ? ['T = floor((R*H - j)/k)'] : []),
      { say: `${found.reason}.` },
    ];
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
