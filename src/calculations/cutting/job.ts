import type { Point } from '../../geometry/curves/point.js';
import { diagnoseWheel, type WheelDiagnosis } from '../../geometry/cutting/faults.js';
import { cutAngles } from '../../geometry/cutting/indexing.js';
import { type MeasuredWheel, measureWheel } from '../../geometry/cutting/measure.js';
import { cutWheel, type Job } from '../../geometry/cutting/simulate.js';
import type { Given } from './given.js';
import { spaceFor } from './space.js';

/** A wheel that was cut, measured and judged. */
export interface CutWheel {
  readonly outlines: readonly (readonly Point[])[];
  readonly measured: MeasuredWheel;
  readonly diagnosis: WheelDiagnosis;
}

/** What the geometry is told of a wheel that is to be cut. */
export function jobFor(g: Given): Job {
  const wanted = spaceFor(g);
  const slip =
    g.slipAt !== undefined && g.slipArcSeconds !== undefined
      ? { at: g.slipAt, by: g.slipArcSeconds, putBack: g.slipPutBack === 'yes' }
      : undefined;
  return {
    space: g.cutterModule === undefined ? wanted : spaceFor(g, g.cutterModule),
    cuts: cutAngles({ teeth: g.teeth, steps: g.steps ?? g.teeth, stepError: g.stepErrorArcSeconds, slip }),
    tipAt: wanted.rootRadius - g.depthError,
    offset: g.offset,
    blankRadius: g.blankDiameter === undefined ? wanted.rimRadius : g.blankDiameter / 2,
    eccentricity: g.eccentricity,
  };
}

/** Cuts the wheel and measures it; at other angles than its moves give where these are told, degrees. */
export function cut(g: Given, cuts?: readonly number[]): CutWheel {
  const wanted = spaceFor(g);
  const own = jobFor(g);
  const job = cuts ? { ...own, cuts } : own;
  const outlines = cutWheel(job);
  const measured = measureWheel(outlines, job, g.teeth, wanted.pitchRadius);
  return {
    outlines,
    measured,
    diagnosis: diagnoseWheel(g.teeth, wanted, measured, job.blankRadius),
  };
}
