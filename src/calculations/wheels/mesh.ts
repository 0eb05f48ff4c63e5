import { leastPlay } from '../../geometry/wheels/action.js';
import { strikes } from '../../geometry/wheels/clearance.js';
import { rolling } from '../../geometry/wheels/rolling.js';
import { playByLaw } from '../../handbook/wheels/law-of-gearing.js';
import { type PairGiven, pairOf } from './pair.js';

/** How two wheels stand together: the pinion's freedom at its pitch circle, mm, or why they do not mesh. */
export type Standing = { readonly shake: number } | { readonly reason: string };

export const reasons = {
  'wheel tips': 'the wheel’s teeth strike the bottom of the pinion’s spaces',
  'leaf tips': 'the pinion’s leaves strike the bottom of the wheel’s spaces',
  binds: 'the teeth bind: there is no shake left at some place of the mesh',
  apart: 'the teeth do not always reach the leaves: the pinion is let go between one tooth and the next',
  slips: 'the teeth slip over the tips of the leaves before the next tooth takes hold',
  butts: 'the teeth strike the tips of the leaves end on',
} as const;

/** A jump of the pinion by more than this share of its pitch, as a tooth takes hold or lets go, is no fair mesh. */
const JUMP = 1e-4;

/** Why a pair that has shake may still not drive fairly; nothing when it does. */
export function unfair(
  leaves: number,
  mesh: {
    readonly thrown: number;
    readonly dropped: number;
    readonly ratios: readonly { readonly ratio: number }[];
  },
): string | undefined {
  const most = (JUMP * 2 * Math.PI) / leaves;
  if (mesh.dropped > most || mesh.ratios.some(({ ratio }) => ratio < 0)) return reasons.slips;
  return mesh.thrown > most ? reasons.butts : undefined;
}

/** Less freedom than this, in modules, is none. */
const NONE = 1e-9;

const standing = (play: number | undefined, radius: number, module: number): Standing => {
  if (play === undefined) return { reason: reasons.apart };
  return play * radius < NONE ? { reason: reasons.binds } : { shake: play * radius * module };
};

/** By rolling the outlines. */
export function standingOf(g: PairGiven, centreDistance: number): Standing {
  const pair = pairOf(g, centreDistance);
  const struck = strikes(pair, pair.pinionDedendum);
  return struck ? { reason: reasons[struck] } : standing(leastPlay(rolling(pair)), g.leaves / 2, g.module);
}

/** By the conditions of contact, and each tip against the other's root in millimetres. */
export function standingByLaw(g: PairGiven, centreDistance: number): Standing {
  const pair = pairOf(g, centreDistance);
  const room = (tip: number, root: number): number =>
    centreDistance - (g.module * (g.teeth + g.leaves)) / 2 - g.module * (tip - root);
  const least = -NONE * g.module;
  if (room(pair.addendum, pair.pinionDedendum) < least) return { reason: reasons['wheel tips'] };
  if (room(pair.leaf.addendum, pair.dedendum) < least) return { reason: reasons['leaf tips'] };
  return standing(playByLaw(pair), g.leaves / 2, g.module);
}
