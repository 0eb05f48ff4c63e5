import { InputError } from '../../diagnostics/errors.js';
import type { Path } from '../../geometry/curves/path.js';
import { cutterForm } from '../../geometry/cutting/cutter.js';
import { largestCorner, type Space, spaceOf } from '../../geometry/cutting/space.js';
import { theoreticalAddendum } from '../../geometry/wheels/epicycloid.js';
import type { SpaceSizes } from '../../handbook/cutting/space.js';
import { addendumByFixedPoint } from '../../handbook/wheels/addendum.js';
import { wheelTable } from '../../handbook/wheels/tooth-tables.js';
import { choice, orElse } from '../quantity.js';
import { PRACTICAL, wheelForms } from '../wheels/tooth-forms.js';

/** The forms whose faces are epicycloids; the round-bottom form has a face of its own. */
export const FORMS = ['2.95', '3.38', '2.45'] as const;

export const depthForm = orElse(choice('form of the cutter, by its full depth', FORMS), '2.95');

/** Radius of the corners at a cutter's tip in modules, where none is given: common practice, no source. */
export const CORNER = 0.25;

interface Wheel {
  readonly teeth: number;
  readonly leaves: number;
  readonly module: number;
  readonly depthForm: (typeof FORMS)[number];
}

/** @throws {InputError} for a pinion larger than its wheel */
export function refuseLargePinion(g: Wheel): void {
  if (g.leaves > g.teeth)
    throw new InputError('leaves', g.leaves, `at most as many as the wheel has teeth, ${g.teeth}`);
}

/** The space by the geometry. */
export function spaceFor(g: Wheel, module = g.module, corner = CORNER): Space {
  const { dedendum } = wheelForms[g.depthForm];
  const addendum = PRACTICAL * theoreticalAddendum(g.teeth, g.leaves);
  return spaceOf(g.teeth, g.leaves, module, { addendum, dedendum, corner });
}

/** The same space by the handbook, with the radius of its rim. */
export function sizesFor(g: Wheel, module = g.module, corner = CORNER): SpaceSizes & { rimRadius: number } {
  const pitchRadius = (module * g.teeth) / 2;
  return {
    teeth: g.teeth,
    leaves: g.leaves,
    module,
    rootRadius: (module * (g.teeth + wheelTable[g.depthForm].root)) / 2,
    rimRadius: pitchRadius + 0.95 * module * addendumByFixedPoint(g.teeth, g.leaves),
    corner: module * corner,
  };
}

/** A cutter's form keeps this near the true curve, mm; as much of it as the module is of 1 mm, where that is less. */
export const formTolerance = (module: number): number => 0.002 * Math.min(1, module);

/** A wheel, and the corners of the cutter for it where they are given, mm. */
export interface Cutter extends Wheel {
  readonly tipRadius?: number | undefined;
}

/** Radius of a cutter's corners, modules. */
export const cornerOf = (g: Cutter): number => (g.tipRadius === undefined ? CORNER : g.tipRadius / g.module);

/** The largest radius its corners may have, mm. */
export function largestTip(g: Wheel): number {
  const { rootRadius, halfAngle } = spaceFor(g);
  return largestCorner(rootRadius, halfAngle);
}

/** A cutter's form, origin in the middle of its tip, open at the rim. */
export const cutterPath = (g: Cutter): Path =>
  cutterForm(spaceFor(g, g.module, cornerOf(g)), formTolerance(g.module));
