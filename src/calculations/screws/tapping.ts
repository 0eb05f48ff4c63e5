import { InputError } from '../../diagnostics/errors.js';
import { engagementOf, holeFor, nearestDrill } from '../../geometry/screws/tapping.js';
import { threadSizes } from '../../geometry/screws/thread.js';
import { practice } from '../../handbook/record.js';
import { fullThread } from '../../handbook/screws/proportions.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { choice, lengths, number, orElse } from '../quantity.js';
import { decimals } from '../working.js';
import { type Base, baseNames, shapeOfBase } from './forms.js';
import {
  factors,
  factorWithin,
  foundOf,
  type GivenThread,
  publishedOf,
  refuseNoThread,
  threadFound,
  threadGiven,
  threadOf,
  threadProofs,
} from './thread.js';

/** What 100 % means on each base. */
const meanings: Readonly<Record<Base, string>> = {
  external: 'the depth of thread on the screw',
  internal: 'the depth of the basic thread in the nut',
  us: 'three quarters of the sharp triangle, as US tables reckon',
};

interface TapGiven extends GivenThread {
  readonly engagement: number;
  readonly base: Base;
  readonly drills: readonly number[];
}

interface TapFound extends ReturnType<typeof foundOf> {
  readonly fullThread: number;
  readonly drill: number;
  readonly possible: boolean;
  readonly nearestDrill: number | null;
  readonly engagementAtNearest: number | null;
  readonly reason?: string;
}

/** Depth of a full thread on one side, measured on the profile that the base means, mm. */
function fullDepth(g: TapGiven): number {
  const { diameter, pitch } = threadOf(g);
  return threadSizes(diameter, shapeOfBase(g.series, pitch, g.base)).depth;
}

/** Shares of the full thread that are any use, percent: less strips, and more breaks the tap. */
const SHARES = { least: 20, most: 110 } as const;

/** A drill for a share at the very end of them may miss it by so much, percent. */
const HAIR = 0.01;

const isUse = (share: number): boolean => share > SHARES.least - HAIR && share < SHARES.most + HAIR;

/** The hole by the published factor, mm. */
function holeByFactor(g: TapGiven): number {
  const { diameter, pitch } = publishedOf(g);
  return diameter - (g.engagement * fullThread[g.base](g.series) * pitch) / 100;
}

/** How far the handbook’s best drill of use lies from the handbook’s hole, mm. */
function missOfBest(g: TapGiven): number | null {
  const [largest, smallest] = [SHARES.least - HAIR, SHARES.most + HAIR].map((engagement) =>
    holeByFactor({ ...g, engagement }),
  ) as [number, number];
  const misses = g.drills
    .filter((drill) => drill > smallest && drill < largest)
    .map((drill) => Math.abs(drill - holeByFactor(g)));
  return misses.length > 0 ? misses.reduce((a, b) => Math.min(a, b)) : null;
}

/** Why no drill serves. */
function whyNone(g: TapGiven, hole: number): string {
  const { diameter } = threadOf(g);
  const smaller = g.drills.filter((drill) => drill < diameter);
  if (smaller.length === 0) return 'every drill is as large as the thread itself';
  const nearest = nearestDrill(smaller, hole);
  const share = decimals(engagementOf(diameter, fullDepth(g), nearest), 0);
  return `no drill near ${decimals(hole, 2)} mm; ${decimals(nearest, 4)} mm would leave ${share} %`;
}

/** Which of two drills as near is chosen makes no difference to how near it is. */
const within = (g: TapGiven): number => 2e-5 + 4 * factorWithin(g);

export const tappingDrill = calculation({
  name: 'thread.tappingDrill',
  title: 'Tapping drill for a share of the full thread',
  given: {
    ...threadGiven,
    engagement: orElse(number('E', 'share of the full thread', '%', SHARES.least, SHARES.most), 70),
    base: choice('base that 100 % means', baseNames),
    drills: lengths('drills there are', 0.1, 150),
  },
  found: {
    ...threadFound,
    fullThread: { symbol: 'k', unit: 'pitches', name: 'full thread on the diameter' },
    drill: mm('d_h', 'hole'),
    possible: { unit: '', name: 'possible' },
    nearestDrill: mm('d_n', 'nearest drill'),
    engagementAtNearest: { symbol: 'E_n', unit: '%', name: 'share of the full thread with that drill' },
    reason: { unit: '', name: 'why it is not possible' },
  },
  refuse: (g) => {
    refuseNoThread(g);
    if (g.base === 'us' && g.series !== 'iso')
      throw new InputError('base', g.base, 'external or internal; the US base is for threads of 60°');
  },
  work: (g): TapFound => {
    const thread = threadOf(g);
    const depth = fullDepth(g);
    const drill = holeFor(thread.diameter, depth, g.engagement);
    const known = { ...foundOf(thread), fullThread: (2 * depth) / thread.pitch, drill };
    const drills = g.drills.filter((one) => isUse(engagementOf(thread.diameter, depth, one)));
    if (drills.length === 0)
      return {
        ...known,
        possible: false,
        nearestDrill: null,
        engagementAtNearest: null,
        reason: whyNone(g, drill),
      };
    const nearest = nearestDrill(drills, drill);
    const engagementAtNearest = engagementOf(thread.diameter, depth, nearest);
    return { ...known, possible: true, nearestDrill: nearest, engagementAtNearest };
  },
  proofs: [
    ...threadProofs,
    {
      of: 'fullThread',
      source: factors,
      within: 3e-6,
      value: (g) => fullThread[g.base](g.series),
    },
    { of: 'drill', formula: 'tapping-hole' },
    {
      of: 'possible',
      source: practice(`a drill of use leaves ${SHARES.least} to ${SHARES.most} % of the full thread`),
      value: (g) => missOfBest(g) !== null,
    },
    {
      of: 'nearestDrill',
      source: factors,
      within,
      value: missOfBest,
      measure: {
        name: 'from the hole wanted, mm',
        of: (nearest, g) => (nearest === null ? null : Math.abs(nearest - holeByFactor(g))),
      },
    },
    {
      of: 'engagementAtNearest',
      source: factors,
      within,
      value: missOfBest,
      measure: {
        name: 'hole of that share from the hole wanted, mm',
        of: (share, g) =>
          share === null ? null : Math.abs(holeByFactor({ ...g, engagement: share }) - holeByFactor(g)),
      },
    },
  ],
  working: (g, found) => [
    {
      say: `${found.designation}. Base: ${g.base}; 100 % is ${meanings[g.base]}, ${decimals(found.fullThread, 4)} of the pitch on the diameter.`,
    },
    ...(g.series === 'iso' || g.base === 'us'
      ? []
      : [{ say: 'In this form screw and nut have the same depth, so both bases come to the same.' }]),
    'd_h = d - E/100*k*P_t',
    ...(found.possible
      ? [{ say: 'If two drills are equally near, take the larger.' }, 'E_n = 100*(d - d_n)/(k*P_t)']
      : [{ say: `Not possible: ${found.reason}.` }]),
  ],
  slips: (g, found) => {
    const other: Base = g.base === 'internal' ? 'external' : 'internal';
    const k = decimals(fullThread[other](g.series), 4);
    return {
      ...(g.series === 'iso'
        ? {
            otherBase: {
              of: 'drill',
              formula: `d - E/100*${k}*P_t`,
              says: `Right drill, other book: ${k} is the factor of the ${other} base.`,
            },
          }
        : {}),
      ...(Math.abs(g.engagement - 100) > 3
        ? {
            full: {
              of: 'drill',
              formula: 'd - k*P_t',
              says: 'That leaves a full thread: the tap would bind and may break.',
            },
          }
        : {}),
      oneSide: {
        of: 'drill',
        formula: 'd - E/100*k*P_t/2',
        says: 'You took the depth off one side only; the hole has a thread all round.',
      },
      body: {
        of: 'drill',
        formula: 'd',
        says: 'That is the screw’s own size: no thread would be left.',
      },
      ...(found.possible
        ? {
            left: {
              of: 'engagementAtNearest',
              formula: '100*d_n/d',
              says: 'You divided drill by diameter. The share is of the depth of thread.',
            },
          }
        : {}),
    };
  },
});
