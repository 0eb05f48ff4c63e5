import { diagnoseSpacing, type SpacingDiagnosis, type SpacingFault } from './diagnose.js';
import type { MeasuredWheel } from './measure.js';
import { median } from './median.js';
import type { Job } from './simulate.js';
import { rollAt, type Space } from './space.js';

/** What can be wrong with the teeth themselves. */
export type FormFault =
  | 'lean'
  | 'deep'
  | 'shallow'
  | 'wideSpaces'
  | 'narrowSpaces'
  | 'runOut'
  | 'flats'
  | 'sharp';

export type Fault = SpacingFault | FormFault;

/** Below these a fault is not named: degrees, and modules. The project's own limits. */
export const LIMITS = { lean: 0.1, depth: 0.05, space: 0.03, runOut: 0.05, land: 0.1 } as const;

/** Everything a wheel shows, spacing first. */
export interface WheelDiagnosis extends SpacingDiagnosis {
  readonly faults: readonly Fault[];
}

/**
 * What is wrong with a wheel that was cut, by its measurements against the wheel that was wanted.
 *
 * @param wanted the space that its teeth should leave
 */
export function diagnoseWheel(
  teeth: number,
  wanted: Space,
  measured: MeasuredWheel,
  blankRadius: Job['blankRadius'],
): WheelDiagnosis {
  const { module } = wanted;
  const spacing = diagnoseSpacing(teeth, module, measured);
  return { ...spacing, faults: [...spacing.spacing, ...formFaults(wanted, measured, blankRadius)] };
}

function formFaults(wanted: Space, measured: MeasuredWheel, blankRadius: number): FormFault[] {
  const { module, pitchRadius } = wanted;
  const faults: FormFault[] = [];
  const judge = (value: number, limit: number, above: FormFault, below: FormFault) => {
    if (Math.abs(value) > limit) faults.push(value > 0 ? above : below);
  };
  judge(measured.lean, LIMITS.lean, 'lean', 'lean');
  judge(wanted.rootRadius - measured.rootRadius, LIMITS.depth * module, 'deep', 'shallow');
  const space = median(measured.spaceWidths);
  judge(space - (Math.PI * module) / 2, LIMITS.space * module, 'wideSpaces', 'narrowSpaces');
  if (measured.runOut > LIMITS.runOut * module) faults.push('runOut');
  // The step sets how far the spaces stand apart, so a land is judged by the space between it and the next.
  const pitch = (median(measured.toothThicknesses.slice(0, -1)) + space) / pitchRadius;
  const between = pitch * blankRadius - median(measured.lands);
  const should = 2 * rimHalfAngle(wanted) * wanted.rimRadius;
  if (faults.length === 0 || faults.every((one) => one === 'lean'))
    judge(should - between, LIMITS.land * module, 'flats', 'sharp');
  return faults;
}

/** Half the angle a space takes of the rim. */
function rimHalfAngle(space: Space): number {
  const { x, y } = space.face.at(rollAt(space, space.rimRadius));
  return space.halfAngle + Math.atan2(y, x);
}
