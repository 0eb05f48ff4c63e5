import { InputError } from '../../diagnostics/errors.js';
import { theoreticalAddendum } from '../../geometry/wheels/epicycloid.js';
import type { Pair } from '../../geometry/wheels/rolling.js';
import { touchingPitchCircles } from '../../geometry/wheels/wheel.js';
import { type LeafCount, PRACTICAL, pinionForms, wheelForms } from './tooth-forms.js';

/** Which addendum a wheel's teeth have. */
export const addendumNames = ['practical', 'theoretical'] as const;

/** What a wheel and its pinion between centres are given; mm. */
export interface PairGiven {
  readonly teeth: number;
  readonly leaves: number;
  readonly module: number;
  readonly addendum: (typeof addendumNames)[number];
}

/** Beyond this a pair is no pair, in modules from where the pitch circles touch. */
const FURTHEST = 3;

/** Room left at the pinion's root below the wheel's tip, in modules (BS 978-2 as commonly reported, from memory). */
const CLEARANCE = 0.4;

/**
 * The proportions of a pinion's leaf, in modules: the table's where it has the count, else those of the next lower
 * count it has (of 6 for 5), cut deep enough for the wheel's tips.
 */
export function leafFor(leaves: number, wheelAddendum: number) {
  const counts = Object.keys(pinionForms).map(Number) as LeafCount[];
  const form = pinionForms[counts.findLast((count) => count <= leaves) ?? 6];
  const listed = Object.hasOwn(pinionForms, leaves);
  return { ...form, dedendum: listed ? form.dedendum : Math.max(form.dedendum, wheelAddendum + CLEARANCE) };
}

/** The pair at a distance between centres, lengths in modules, and the depth of the pinion's root. */
export function pairOf(g: PairGiven, centreDistance: number): Pair & { readonly pinionDedendum: number } {
  const theoretical = theoreticalAddendum(g.teeth, g.leaves);
  const { dedendum, ...leaf } = leafFor(g.leaves, PRACTICAL * theoretical);
  return {
    teeth: g.teeth,
    leaves: g.leaves,
    centres: centreDistance / g.module,
    addendum: g.addendum === 'practical' ? PRACTICAL * theoretical : theoretical,
    dedendum: wheelForms['2.95'].dedendum,
    leaf,
    pinionDedendum: dedendum,
  };
}

/** @throws {InputError} unless a distance between centres is one that a pair could have */
export function refuseFarCentres(
  key: string,
  g: { readonly teeth: number; readonly leaves: number; readonly module: number },
  centreDistance: number | undefined,
): void {
  const right = touchingPitchCircles(g.module, g.teeth, g.leaves);
  // To the figures that are printed, and the ends themselves are accepted.
  const [least, most] = [-FURTHEST, FURTHEST].map((one) => (right + one * g.module).toPrecision(7));
  if (centreDistance === undefined) return;
  if (centreDistance < Number(least) || centreDistance > Number(most))
    throw new InputError(
      key,
      centreDistance,
      `${Number(least)} to ${Number(most)} mm, ${FURTHEST} modules from pitch circles touching`,
    );
}
