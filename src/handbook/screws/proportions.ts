import type { Citation } from '../record.js';

/** The published factors of one form of thread, each times the pitch. */
export interface Proportions {
  /** Angle between the flanks, degrees. */
  readonly angle: number;
  readonly sharpHeight: number;
  /** What the pitch diameter is less than the major diameter. */
  readonly effective: number;
  /** What the basic minor diameter is less than the major diameter. */
  readonly minor: number;
  /** Depth cut on the screw. */
  readonly depth: number;
  readonly rootRadius: number;
  readonly source: Citation;
}

/** Whitworth form, which model engineers’ threads have too. */
const whitworth: Proportions = {
  angle: 55,
  sharpHeight: 0.960491,
  effective: 0.640327,
  minor: 1.280654,
  depth: 0.640327,
  rootRadius: 0.137329,
  source: { work: 'whitworth-page', at: 'depth 0.640327 p, radius 0.137329 p; sharp height from memory' },
};

/** By series, as the catalogue names them. */
export const proportions: Readonly<Record<'iso' | 'whitworth' | 'ba' | 'me', Proportions>> = {
  iso: {
    angle: 60,
    sharpHeight: 0.866025404,
    effective: 0.649519052,
    minor: 1.082531754,
    depth: 0.613435,
    rootRadius: 0.144337567,
    source: { work: 'iso68', at: 'H, 3H/8, 5H/8, and the screw’s 17H/24 and H/6, from memory' },
  },
  whitworth,
  me: whitworth,
  ba: {
    angle: 47.5,
    sharpHeight: 1.136336,
    effective: 0.6,
    minor: 1.2,
    depth: 0.6,
    // The page’s figure, which touches both flanks; the usual statement, 2p/11, is half a percent more and does not.
    rootRadius: 0.1808346,
    source: { work: 'ba-profile', at: 'depth 0.6 p, radius 0.1808346 p' },
  },
};

/** What a full thread takes off the diameter, in pitches, by the base that a percentage is told on. */
export const fullThread: Readonly<
  Record<'external' | 'internal' | 'us', (series: keyof typeof proportions) => number>
> = {
  external: (series) => 2 * proportions[series].depth,
  internal: (series) => proportions[series].minor,
  us: () => 1.299038,
};
