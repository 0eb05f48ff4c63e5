import { crankAfter, simpleIndexing } from '../../geometry/dividing/indexing.js';
import { greatestCommonDivisor } from '../../geometry/fractions.js';
import { crankByStepping, settingsByTrial } from '../../handbook/dividing/counting.js';
import type { Citation } from '../../handbook/record.js';
import { formatAngle } from '../../units/angle.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { spacesInWords } from '../moves.js';
import { whole } from '../quantity.js';
import { circles, divisions, possible, ratio, reason, turns } from './givens.js';

const byTrial: Citation = {
  work: 'derived',
  at: 'every hole tried: divisions × movement = ratio, in whole spaces',
};

function reasonNone(count: number, head: number): string {
  return `${head}/${count} of a turn comes out in whole spaces on none of these circles`;
}

/** `40 ÷ 56 = 5/7 of a turn`, `60 ÷ 56 = 15/14 = 1 turn and 1/14`. */
export function turnsForOne(count: number, head: number): string {
  const common = greatestCommonDivisor(count, head);
  const [top, bottom] = [head / common, count / common];
  const whole = Math.floor(top / bottom);
  const start = `Turns for one division: ${head} ÷ ${count}`;
  if (bottom === 1) return `${start} = ${whole}, no more.`;
  const lowest = common === 1 ? 'in lowest terms already' : `= ${top}/${bottom} in lowest terms`;
  return whole === 0
    ? `${start} ${lowest}.`
    : `${start} ${lowest}: ${counted(whole, 'whole turn')} and ${top - whole * bottom}/${bottom}.`;
}

interface IndexGiven {
  readonly divisions: number;
  readonly ratio: number;
  readonly circles: readonly number[];
}

const trial = (g: IndexGiven) => settingsByTrial(g.divisions, g.ratio, g.circles);
const possibleByTrial = {
  of: 'possible',
  source: byTrial,
  value: (g: IndexGiven) => trial(g).settings.length > 0,
} as const;

export const simple = calculation({
  name: 'dividing.simple',
  title: 'Simple indexing',
  given: { divisions, ratio, circles },
  found: {
    possible,
    turns,
    settings: { unit: 'spaces', name: 'spaces, on each circle that serves' },
    reason,
  },
  work: (g) => {
    const { turns, settings } = simpleIndexing(g.divisions, g.ratio, g.circles);
    const possible = settings.length > 0;
    return possible
      ? { possible, turns, settings }
      : { possible, turns, settings, reason: reasonNone(g.divisions, g.ratio) };
  },
  proofs: [
    possibleByTrial,
    { of: 'turns', source: byTrial, value: (g) => trial(g).turns },
    {
      of: 'settings',
      source: byTrial,
      value: (g) => trial(g).settings,
    },
  ],
  working: (g, found) => [
    { say: turnsForOne(g.divisions, g.ratio) },
    ...(found.possible
      ? found.settings.map(({ holes, circle }) => ({
          say: `${spacesInWords(found.turns, holes)} on the ${circle}-hole circle. Check: ${g.divisions} × ${found.turns * circle + holes} = ${g.ratio} × ${circle}.`,
        }))
      : [{ say: `Not possible: ${reasonNone(g.divisions, g.ratio)}.` }]),
  ],
});

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
    if (!setting)
      return { possible: false, circle: null, rows: [], reason: reasonNone(g.divisions, g.ratio) };
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
      source: { work: 'derived', at: 'the crank moved one division at a time, spaces counted and carried' },
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

export const sectorArms = calculation({
  name: 'dividing.sectorArms',
  title: 'Holes between the sector arms',
  given: { holes: whole('k', 'spaces to move', 1, 1000) },
  found: {
    holesBetween: { symbol: 'q', unit: 'holes', name: 'holes inside the arms, the pin’s own among them' },
  },
  work: (g) => ({ holesBetween: g.holes + 1 }),
  proofs: [
    {
      of: 'holesBetween',
      source: { work: 'derived', at: 'holes counted from nought' },
      value: (g) => Array.from({ length: g.holes + 1 }, (_, hole) => hole).length,
    },
  ],
  working: ['q = k + 1'],
  slips: {
    fencePost: {
      of: 'holesBetween',
      formula: 'k',
      says: 'Count spaces. The hole the pin is in is nought, not one.',
    },
  },
});
