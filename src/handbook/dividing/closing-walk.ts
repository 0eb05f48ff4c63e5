/** What is found on a wheel by going round it. */
export interface Walked {
  /** Degrees that the last division passes the first cut; below 0 it falls short. */
  readonly past: number;
  /** Width of what stands between the last space and the first, degrees; 0 where they meet. */
  readonly lastTooth: number;
}

/**
 * Goes round a wheel cut by cut, the head moved one step at a time, with spaces half the true pitch wide.
 *
 * @param stepErrorArcSeconds above 0 for a step too long
 */
export function closingByWalking(divisions: number, stepErrorArcSeconds: number): Walked {
  const full = 1_296_000;
  const step = full / divisions + stepErrorArcSeconds;
  const space = full / divisions / 2;
  let place = 0;
  for (let cut = 1; cut < divisions; cut++) place += step;
  const [edgeOfLast, edgeOfFirst] = [place + space / 2, full - space / 2];
  return {
    past: (place + step - full) / 3600,
    lastTooth: Math.max(0, edgeOfFirst - edgeOfLast) / 3600,
  };
}
