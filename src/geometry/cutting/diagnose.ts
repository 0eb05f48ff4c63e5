import type { MeasuredWheel } from './measure.js';
import { median } from './median.js';

/** What the spacing of a wheel's teeth tells of how the work was turned. */
export interface SpacingDiagnosis {
  readonly spacing: readonly SpacingFault[];
  /** By how many arc seconds every move was too long, against the teeth that were wanted. */
  readonly stepError: number;
  /** The move that went wrong alone, counted from 1, and by how many arc seconds it was too long. */
  readonly slip?: { readonly at: number; readonly by: number; readonly putBack: boolean };
}

export type SpacingFault =
  | 'overrun'
  | 'uneven'
  | 'slip'
  | 'slipPutBack'
  | 'unfinished'
  | 'closingThick'
  | 'closingThin'
  | 'otherCount';

/** What is needed of the measured wheel. */
export type Spacing = Pick<MeasuredWheel, 'toothThicknesses' | 'spaceWidths'>;

/** Teeth that differ by less than this, in modules, are alike. */
export const ALIKE = 0.02;

const ARC_SECONDS = (180 / Math.PI) * 3600;

/**
 * From the teeth and spaces measured round a wheel back to how it was indexed. Teeth of one size but the last tell of
 * a constant step; one tooth out, of a slip that was kept; two neighbours, of one that was put back.
 *
 * @param teeth that were wanted
 * @param module mm
 * @param measured at the pitch circle of the wheel that was wanted; at least four
 */
export function diagnoseSpacing(teeth: number, module: number, measured: Spacing): SpacingDiagnosis {
  const radius = (module * teeth) / 2;
  const all = measured.toothThicknesses;
  const count = all.length;
  const last = all[count - 1] ?? 0;
  const interior = all.slice(0, -1);
  const tooth = median(interior);
  const space = median(measured.spaceWidths);
  const pitch = (tooth + space) / radius;
  const turn = 2 * Math.PI;
  if ((count - 1) * pitch > turn + (ALIKE * module) / radius)
    return { spacing: ['overrun'], stepError: (pitch - turn / teeth) * ARC_SECONDS };

  const isOdd = (thickness: number): boolean => Math.abs(thickness - tooth) > ALIKE * module;
  const odd = interior.flatMap((thickness, i) => (isOdd(thickness) ? [{ i, by: thickness - tooth }] : []));
  const [first, second] = odd;
  const putBack =
    odd.length === 2 &&
    first !== undefined &&
    second?.i === first.i + 1 &&
    Math.abs(first.by + second.by) <= ALIKE * module;
  const kept = odd.length === 1 && first ? first.by : 0;
  // The closing tooth as it would be without the slip.
  const closing = last + kept - tooth;
  const step = last > 0 ? (turn - (last + kept + space) / radius) / (count - 1) : pitch;
  const stepError = (step - turn / teeth) * ARC_SECONDS;
  if (odd.length > 0 && !putBack && odd.length !== 1) return { spacing: ['uneven'], stepError };
  const slip = first && { at: first.i + 1, by: (first.by / radius) * ARC_SECONDS, putBack };
  const spacing: SpacingFault[] = slip ? [putBack ? 'slipPutBack' : 'slip'] : [];
  if (closing < -ALIKE * module) spacing.push('closingThin');
  else if (closing > ALIKE * module) {
    const over = closing / (pitch * radius);
    const near = Math.abs(over - Math.round(over)) * pitch * radius;
    spacing.push(Math.round(over) > 0 && near <= ALIKE * module ? 'unfinished' : 'closingThick');
  } else if (count !== teeth && spacing.length === 0) spacing.push('otherCount');
  return slip ? { spacing, stepError, slip } : { spacing, stepError };
}
