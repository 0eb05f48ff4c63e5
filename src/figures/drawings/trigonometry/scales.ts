import { ENLARGEMENTS, REDUCTIONS } from '../../drafting/scale.js';

const LADDER: readonly number[] = [...ENLARGEMENTS, ...REDUCTIONS.slice(1), 0.05, 0.02, 0.01];

/** Scales at which a part of some size comes out near a size on the paper, mm; the nearest first. */
export function scalesNear(size: number, wanted: number): number[] {
  const off = (scale: number): number => Math.abs(Math.log((size * scale) / wanted));
  return LADDER.filter((scale) => off(scale) < 1.7).toSorted((a, b) => off(a) - off(b));
}
