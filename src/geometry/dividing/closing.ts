/** What a constant error of the step does to a wheel. Lengths mm along the pitch circle. */
export interface Closing {
  /** Degrees by which the last division passes the first cut; below 0 it falls short. */
  readonly closingAngle: number;
  readonly closingAtRim: number;
  /** Every tooth but the last. */
  readonly toothThickness: number;
  /** Between the last space cut and the first; 0 where they meet or run into each other. */
  readonly lastToothThickness: number;
}

/**
 * Each space is half the true pitch wide and its middle lies as far out as all the steps before it: after the first cut
 * one step’s error, at the last division all of them.
 *
 * @param stepErrorArcSeconds above 0 for a step too long
 * @param diameter of the pitch circle
 */
export function closingOf(divisions: number, stepErrorArcSeconds: number, diameter: number): Closing {
  const error = stepErrorArcSeconds / 3600;
  const halfPitch = 180 / divisions;
  const alongRim = (degrees: number): number => (Math.PI * diameter * degrees) / 360;
  return {
    closingAngle: divisions * error,
    closingAtRim: alongRim(divisions * error),
    toothThickness: alongRim(halfPitch + error),
    // From the far edge of the last space to the near edge of the first.
    lastToothThickness: alongRim(Math.max(0, halfPitch - (divisions - 1) * error)),
  };
}
