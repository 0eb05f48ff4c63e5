/** A movement of the crank: whole turns, and spaces on a circle. */
export interface Movement {
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
}

/** Thousandths of an arc second in a whole turn. */
const FULL = 1_296_000_000;

/**
 * The movement of the crank that comes nearest to an angle, never none at all. Of circles that come equally near, the
 * smallest; of two movements equally near, the shorter. Whole numbers decide, so `exact` is exact.
 *
 * @param thousandths the angle in whole thousandths of an arc second, up to a full turn
 * @returns the movement, and by how much it is too far, in arc seconds
 */
export function movementForAngle(thousandths: number, ratio: number, circles: readonly number[]) {
  let best: { spaces: number; circle: number; over: number } | undefined;
  for (const circle of circles) {
    // A space is FULL/(ratio × circle); everything is kept multiplied by ratio × circle.
    const wanted = thousandths * ratio * circle;
    const spaces = nearestSpaces(wanted, FULL);
    const over = spaces * FULL - wanted;
    if (best && !isNearer({ circle, over }, best)) continue;
    best = { spaces, circle, over };
  }
  if (!best) throw new RangeError('no circle to move on');
  const { spaces, circle, over } = best;
  return {
    turns: Math.floor(spaces / circle),
    holes: spaces % circle,
    circle,
    errorArcSeconds: over / (1000 * ratio * circle),
    exact: over === 0,
  };
}

/** Whole spaces nearest to wanted/unit, at least 1; the fewer when it lies midway. */
export function nearestSpaces(wanted: number, unit: number): number {
  const below = Math.floor(wanted / unit);
  const rest = wanted - below * unit;
  return Math.max(1, 2 * rest > unit ? below + 1 : below);
}

interface Miss {
  readonly circle: number;
  /** Spaces too many, times the same number for every circle. */
  readonly over: number;
}

/** Whether one movement misses by less than another, or by as much on a smaller circle. */
export function isNearer(a: Miss, b: Miss): boolean {
  const difference = Math.abs(a.over) * b.circle - Math.abs(b.over) * a.circle;
  return difference < 0 || (difference === 0 && a.circle < b.circle);
}
