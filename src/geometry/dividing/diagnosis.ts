/** A way the crank may have been moved, and the wheel that it makes. Whole numbers. */
export interface Diagnosis {
  /** Spaces at every move. */
  readonly holesMoved: number;
  /** Spaces too many at one move that was not put back; below 0 too few. */
  readonly onceSpaces: number;
  /** Whole teeth that go round. */
  readonly teethCut: number;
  /** Spaces of the crank left over after the intended number of moves; below 0 the last runs past the first. */
  readonly gapSpaces: number;
}

/** A wheel that was meant, and the move that was to make it. */
export interface Intention {
  readonly divisions: number;
  /** Spaces on the circle for one turn of the work: the head’s ratio × the circle’s holes. */
  readonly full: number;
  /** Spaces that were to be moved each time, whole turns among them. */
  readonly intended: number;
}

/** Most readings of one wheel. */
const MOST = 5;

/**
 * Readings of a gap left after all the moves, the likeliest first: the move itself wrong, or one slip, before both;
 * then the smaller slip.
 *
 * @param gapSpaces the gap in whole spaces of the crank, less than a turn of the work
 */
export function diagnoseGap({ divisions, full, intended }: Intention, gapSpaces: number): Diagnosis[] {
  const moved = full - gapSpaces;
  const less = Math.floor(moved / divisions);
  const readings = (moved % divisions === 0 ? [less] : [less, less + 1])
    .filter((holesMoved) => holesMoved > 0)
    .map((holesMoved) => {
      const onceSpaces = moved - divisions * holesMoved;
      return { holesMoved, onceSpaces, teethCut: Math.floor((full - onceSpaces) / holesMoved), gapSpaces };
    });
  const slips = (one: Diagnosis) => Number(one.holesMoved !== intended) + Number(one.onceSpaces !== 0);
  return readings.sort((a, b) => slips(a) - slips(b) || Math.abs(a.onceSpaces) - Math.abs(b.onceSpaces));
}

/**
 * Readings of a count of teeth, the likeliest first: a move that makes just so many and closes; then one that makes so
 * many and leaves a gap; then one that makes one fewer and a sliver that was counted. Among equals the move nearest to
 * the one intended. None when no steady move makes so many.
 *
 * @param counted teeth counted round the wheel, at least 2
 */
export function diagnoseCount({ divisions, full, intended }: Intention, counted: number): Diagnosis[] {
  const even = full % counted === 0 ? [full / counted] : [];
  const withGap = nearIn(intended, Math.floor(full / (counted + 1)) + 1, Math.floor(full / counted));
  const withSliver = nearIn(intended, Math.floor(full / counted) + 1, Math.ceil(full / (counted - 1)) - 1);
  return [...new Set([...even, ...withGap, ...withSliver])].slice(0, MOST).map((holesMoved) => ({
    holesMoved,
    onceSpaces: 0,
    teethCut: Math.floor(full / holesMoved),
    gapSpaces: full - divisions * holesMoved,
  }));
}

/** The few whole numbers of a closed range that are nearest to one, nearest first, of two equally near the less. */
function nearIn(middle: number, least: number, most: number): number[] {
  const start = Math.min(most, Math.max(least, middle));
  const window: number[] = [];
  for (let one = Math.max(least, start - MOST); one <= Math.min(most, start + MOST); one++) window.push(one);
  return window.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b).slice(0, MOST);
}
