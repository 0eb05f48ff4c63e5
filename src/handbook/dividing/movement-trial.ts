/** A movement on one circle found by counting, and how far past what was wanted it goes, in parts of a space. */
export interface CountedMovement {
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
  /** Whole parts past what was wanted; of `parts` to a space. Below 0 it falls short. */
  readonly past: bigint;
  readonly parts: bigint;
}

/**
 * A movement counted out, for each circle: whole turns laid off one by one while they go in, then spaces one by one
 * until the next would pass; the nearer of that and the next, never none. Whole numbers only.
 *
 * @param wanted turns of the crank, as `top/bottom`
 */
export function movementsByCounting(
  top: bigint,
  bottom: bigint,
  circles: readonly number[],
): readonly CountedMovement[] {
  let turns = 0;
  let left = top;
  for (; left >= bottom; left -= bottom) turns++;
  return circles.map((circle) => {
    let holes = 0;
    // A space is bottom parts; the rest of a turn is left × circle parts.
    let short = left * BigInt(circle);
    for (; short >= bottom; short -= bottom) holes++;
    const further = 2n * short > bottom || (turns === 0 && holes === 0);
    const spaces = further ? holes + 1 : holes;
    const place = spaces === circle ? { turns: turns + 1, holes: 0 } : { turns, holes: spaces };
    return { ...place, circle, past: further ? bottom - short : -short, parts: bottom };
  });
}

/** The same, nearest first; of those equally near, the smaller circle. */
export function nearestByCounting(top: bigint, bottom: bigint, circles: readonly number[]) {
  const size = ({ past, parts, circle }: CountedMovement) => ({
    past: past < 0n ? -past : past,
    space: parts * BigInt(circle),
  });
  return [...movementsByCounting(top, bottom, circles)].sort((a, b) => {
    const [one, other] = [size(a), size(b)];
    const difference = one.past * other.space - other.past * one.space;
    return difference === 0n ? a.circle - b.circle : difference < 0n ? -1 : 1;
  });
}

/** What a movement is out at the work, arc seconds: its share of a space, of which there are ratio × circle to the turn. */
export const secondsPast = ({ past, parts, circle }: CountedMovement, ratio: number): number =>
  ((Number(past) / Number(parts)) * 1_296_000) / (ratio * circle);
