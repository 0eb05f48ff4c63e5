/** A movement of the crank: whole turns, and spaces on a circle. */
export interface Movement {
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
}

/** A share of a full turn, exact: `top/bottom`, both above 0. */
export interface Turn {
  readonly top: bigint;
  readonly bottom: bigint;
}

/**
 * The movement of the crank that comes nearest to an angle, never none at all. Of circles that come equally near, the
 * smallest; of two movements equally near, the shorter. Whole numbers decide, so `exact` is exact.
 *
 * @param angle up to a full turn
 * @returns the movement, and by how much it is too far, in arc seconds
 */
export function movementForAngle({ top, bottom }: Turn, ratio: number, circles: readonly number[]) {
  let best: { spaces: number; circle: number; over: bigint } | undefined;
  for (const circle of circles) {
    // A space is 1/(ratio × circle) of a turn; everything is kept multiplied by bottom × ratio × circle.
    const wanted = top * BigInt(ratio * circle);
    const spaces = nearestSpaces(wanted, bottom);
    const over = BigInt(spaces) * bottom - wanted;
    if (best && !isNearer({ circle, over }, best)) continue;
    best = { spaces, circle, over };
  }
  if (!best) throw new RangeError('no circle to move on');
  const { spaces, circle, over } = best;
  return {
    turns: Math.floor(spaces / circle),
    holes: spaces % circle,
    circle,
    errorArcSeconds: ((Number(over) / Number(bottom)) * 1_296_000) / (ratio * circle),
    exact: over === 0n,
  };
}

/** Whole spaces nearest to wanted/unit, at least 1; the fewer when it lies midway. */
export function nearestSpaces(wanted: bigint, unit: bigint): number {
  const below = wanted / unit;
  const spaces = 2n * (wanted - below * unit) > unit ? below + 1n : below;
  return Math.max(1, Number(spaces));
}

interface Miss {
  readonly circle: number;
  /** Spaces too many, times the same number for every circle. */
  readonly over: bigint;
}

const sizeOf = (value: bigint): bigint => (value < 0n ? -value : value);

/** Whether one movement misses by less than another, or by as much on a smaller circle. */
export function isNearer(a: Miss, b: Miss): boolean {
  const [one, other] = [sizeOf(a.over) * BigInt(b.circle), sizeOf(b.over) * BigInt(a.circle)];
  return one < other || (one === other && a.circle < b.circle);
}
