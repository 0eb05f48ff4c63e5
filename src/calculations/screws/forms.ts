import { sharpHeight, type ThreadShape } from '../../geometry/screws/profile.js';
import type { Series } from '../../handbook/screws/thread-table.js';

/** The series of threads, as the catalogue names them. */
export const seriesNames = ['iso', 'whitworth', 'ba', 'me'] as const satisfies readonly Series[];

/** How much of the triangle’s height is taken off at a crest or root, and whether it is rounded. */
interface End {
  readonly share: number;
  readonly round: boolean;
}

interface ThreadForm {
  readonly name: string;
  /** Angle between the flanks, degrees. */
  readonly angle: number;
  readonly crest: End;
  /** At the bottom of the screw’s groove. */
  readonly root: End;
  /** Of the basic profile, by which the nut’s minor diameter goes. */
  readonly basicRoot: End;
  /** Depth, diameters and root radius as a reader works them, from d, P_t, A and H. */
  readonly steps: readonly string[];
}

const sixth: End = { share: 1 / 6, round: true };
const rounded = (end: End, name: string, angle: number, depth: string): ThreadForm => ({
  name,
  angle,
  crest: end,
  root: end,
  basicRoot: end,
  steps: [depth, 'd_2 = d - h', 'd_1 = d - 2*h', 'd_3 = d_1', 'r = (H - h)/2*sind(A/2)/(1 - sind(A/2))'],
});

/** ISO 68-1; BS 84; BS 93, whose depth is six tenths of the pitch; model engineers’ threads have the Whitworth form. */
const forms: Readonly<Record<Series, ThreadForm>> = {
  iso: {
    name: 'ISO metric form',
    angle: 60,
    crest: { share: 1 / 8, round: false },
    root: sixth,
    basicRoot: { share: 1 / 4, round: false },
    steps: ['h = 17/24*H', 'd_2 = d - 2*3/8*H', 'd_1 = d - 2*5/8*H', 'd_3 = d - 2*h', 'r = H/6'],
  },
  whitworth: rounded(sixth, 'Whitworth form', 55, 'h = 2/3*H'),
  me: rounded(sixth, 'Whitworth form', 55, 'h = 2/3*H'),
  ba: rounded({ share: (1 - 0.6 / sharpHeight(1, 47.5)) / 2, round: true }, 'BA form', 47.5, 'h = 0.6*P_t'),
};

/** The form of a series. */
export const formOf = (series: Series): ThreadForm => forms[series];

/** The section of a thread; `basic` for the profile the nut’s sizes come from. */
export function shapeOf(series: Series, pitch: number, profile: 'screw' | 'basic'): ThreadShape {
  const { angle, crest, root, basicRoot } = forms[series];
  const height = sharpHeight(pitch, angle);
  const corner = ({ share, round }: End) => ({ off: share * height, round });
  return { pitch, angle, crest: corner(crest), root: corner(profile === 'screw' ? root : basicRoot) };
}

/** What 100 % of a thread may mean: the screw’s depth, the basic thread’s in the nut, or that of US tables. */
export const baseNames = ['external', 'internal', 'us'] as const;
export type Base = (typeof baseNames)[number];

/** The section whose depth is 100 % on a base; US tables reckon with an eighth off crest and root alike. */
export function shapeOfBase(series: Series, pitch: number, base: Base): ThreadShape {
  if (base !== 'us') return shapeOf(series, pitch, base === 'external' ? 'screw' : 'basic');
  const { angle } = forms[series];
  const eighth = { off: sharpHeight(pitch, angle) / 8, round: false };
  return { pitch, angle, crest: eighth, root: eighth };
}
