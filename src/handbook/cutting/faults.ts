import type { expectedWheel } from './wheel.js';

/** How a wheel was cut, as far as its faults go. Lengths mm, angles degrees; the step and slip as they were moved. */
export interface Cutting {
  readonly teeth: number;
  readonly module: number;
  /** Moves made, and one of them that went wrong, counted from 1. */
  readonly steps: number;
  readonly step: number;
  readonly slip?: { readonly at: number; readonly by: number; readonly putBack: boolean } | undefined;
  readonly offset: number;
  readonly depthError: number;
  readonly rimSpace: number;
  readonly blankRadius: number;
}

/** 1 for a fault that must be named, 0 for one that must not, ½ where its size lies on the limit or the teeth that would tell are gone. */
export type Certainty = 0 | 0.5 | 1;

/** A fifth to either side of a limit either word is right. */
const certain = (value: number, limit: number): Certainty =>
  value > 1.2 * limit ? 1 : value < 0.8 * limit ? 0 : 0.5;

const not = (one: Certainty): Certainty => (1 - one) as Certainty;

/**
 * The faults a wheel must show, from how it was cut and what it should measure; the limits are the project's own: teeth
 * alike within 0.02 modules, lean 0.1°, depth and run-out 0.05, space 0.03 and land 0.1 modules.
 */
export function expectedFaults(
  cutting: Cutting,
  expected: ReturnType<typeof expectedWheel>,
): Record<string, Certainty> {
  return { ...spacing(cutting, expected), ...form(cutting, expected) };
}

function spacing(cutting: Cutting, expected: ReturnType<typeof expectedWheel>): Record<string, Certainty> {
  const { teeth, module, step, slip } = cutting;
  const radius = (module * teeth) / 2;
  const along = (degrees: number): number => (Math.PI * radius * degrees) / 180;
  const alike = 0.02 * module;
  const count = expected.gaps.length;
  const none = {
    overrun: 0,
    uneven: 0,
    slip: 0,
    slipPutBack: 0,
    unfinished: 0,
    closingThick: 0,
    closingThin: 0,
    otherCount: 0,
  } as const;
  const either = Object.fromEntries(Object.keys(none).map((fault) => [fault, 0.5])) as Record<
    string,
    Certainty
  >;
  const over = along((count - 1) * step - 360);
  if (over > 1.5 * alike && !slip) return { ...none, overrun: 1 };
  const gone = expected.toothThicknesses.slice(0, -1).some((thickness) => thickness < 1.5 * alike);
  // A slip of more than a move sets its cut beyond its neighbour: the spaces do not stand in the order they were cut.
  const crossed = slip !== undefined && (-slip.by > step || (slip.putBack && slip.by > step));
  const size = slip ? certain(Math.abs(along(slip.by)), alike) : 0;
  if (
    over > 0.5 * alike ||
    gone ||
    crossed ||
    size === 0.5 ||
    (slip && (count < 7 || count !== cutting.steps))
  )
    return either;
  // A slip at the last move has no next move to be put back at.
  const putBack = slip?.putBack === true && slip.at < cutting.steps - 1;
  // And one put back at the last move is told by its first tooth and the closing one.
  const split = putBack && slip.at === cutting.steps - 1;
  if (split) return either;
  const closing = along(360 - count * step);
  const wide = closing / along(step);
  const whole = Math.round(wide);
  const plain = whole >= 1 ? not(certain(along(step) * Math.abs(wide - whole), alike)) : 0;
  const thick = certain(closing, alike);
  return {
    ...none,
    slip: putBack ? 0 : size,
    slipPutBack: putBack ? size : 0,
    closingThin: certain(-closing, alike),
    unfinished: Math.min(thick, plain) as Certainty,
    closingThick: Math.min(thick, not(plain)) as Certainty,
    otherCount: count !== teeth && !slip ? not(Math.max(thick, certain(-closing, alike)) as Certainty) : 0,
  };
}

/** The middle one of a rising list, the upper of two. */
const middleOf = <T>(rising: readonly T[]): T | undefined => rising[Math.floor(rising.length / 2)];

function form(cutting: Cutting, expected: ReturnType<typeof expectedWheel>): Record<string, Certainty> {
  const { teeth, module, step, offset, depthError, rimSpace, blankRadius } = cutting;
  const lean = (Math.asin(Math.abs(offset) / ((module * teeth) / 2)) * 180) / Math.PI;
  const wider = expected.spaceWidth - (Math.PI * module) / 2;
  const faults: Record<string, Certainty> = {
    deep: certain(depthError, 0.05 * module),
    shallow: certain(-depthError, 0.05 * module),
    wideSpaces: certain(wider, 0.03 * module),
    narrowSpaces: certain(-wider, 0.03 * module),
    runOut: certain(expected.runOut, 0.05 * module),
  };
  const worst = Math.max(...Object.values(faults)) as Certainty;
  const lands = expected.lands
    .map((land, i) => ({ land, gap: expected.gaps[i] ?? 0 }))
    .sort((a, b) => a.land - b.land);
  const { land, gap } = middleOf(lands) ?? { land: 0, gap: 0 };
  const excess = land - (((Math.PI * step) / 180) * blankRadius - rimSpace);
  const along = (degrees: number): number => (Math.PI * module * teeth * degrees) / 360;
  const tooth = middleOf(expected.toothThicknesses.slice(0, -1).sort((a, b) => a - b)) ?? 0;
  // Few teeth, and one of them out: the middle one may be no tooth that a plain move leaves.
  const plain =
    Math.max(Math.abs(along(gap - step)), Math.abs(tooth + expected.spaceWidth - along(step))) <
    0.02 * module;
  // With another fault that explains the tips they are not spoken of.
  const tips = (value: number): Certainty =>
    worst === 1
      ? 0
      : plain
        ? (Math.min(certain(value, 0.1 * module), worst === 0.5 ? 0.5 : 1) as Certainty)
        : 0.5;
  return { lean: certain(lean, 0.1), ...faults, flats: tips(excess), sharp: tips(-excess) };
}
