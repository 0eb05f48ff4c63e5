/** Along the feed, from full depth under the cutter's centre to where its rim leaves the surface, mm. */
export function approach(cutterDiameter: number, depth: number): number {
  const radius = cutterDiameter / 2;
  const above = radius - depth;
  return Math.sqrt((radius - above) * (radius + above));
}

/** Height of metal left at the root when the cutter's centre stops short of the exit face, mm. */
export function humpLeft(cutterDiameter: number, short: number): number {
  const radius = cutterDiameter / 2;
  // Written so that a small hump keeps its figures: r - sqrt(r^2 - s^2) loses them.
  return (short * short) / (radius + Math.sqrt((radius - short) * (radius + short)));
}

/** Depths of the passes, mm: each the largest, but for the last, which takes what is left. */
export function passDepths(depth: number, largest: number): number[] {
  const passes: number[] = [];
  // A remainder of rounding dust is no pass.
  const count = Math.ceil(depth / largest - 1e-9);
  for (let pass = 1; pass < count; pass++) passes.push(largest);
  passes.push(depth - largest * (count - 1));
  return passes;
}
