/** A wheel that was meant, and the circle it was cut on. */
interface Meant {
  readonly divisions: number;
  readonly ratio: number;
  readonly circle: number;
  readonly intendedHoles: number;
}

interface Reading {
  readonly holesMoved: number;
  readonly onceSpaces: number;
  readonly teethCut: number;
  /** Degrees; none where the moves go round more than twice. */
  readonly closingGapAngle: number | null;
}

/**
 * Every movement of whole spaces tried round the wheel: those that leave the gap seen, but for one slip smaller than the
 * count of divisions. The fewer slips first, then the smaller single slip.
 */
export function gapByTrial(meant: Meant, gapAngle: number): Reading[] {
  const full = meant.ratio * meant.circle;
  const gap = Math.round((gapAngle / 360) * full);
  const readings: { rank: number; reading: Reading }[] = [];
  for (let spaces = 1; spaces <= full; spaces++) {
    const once = full - gap - meant.divisions * spaces;
    if (Math.abs(once) >= meant.divisions) continue;
    const slips = (spaces === meant.intendedHoles ? 0 : 1) + (once === 0 ? 0 : 1);
    readings.push({ rank: slips * 1e6 + Math.abs(once), reading: cut(spaces, once, meant) });
  }
  return readings.sort((a, b) => a.rank - b.rank).map(({ reading }) => reading);
}

/** Every movement tried: those that make the count of teeth even, or with a gap, or with a sliver that was counted. */
export function countByTrial(meant: Meant, counted: number): Reading[] {
  const full = meant.ratio * meant.circle;
  const fits: { kind: number; off: number; spaces: number }[] = [];
  for (let spaces = 1; spaces <= full; spaces++) {
    const reach = spaces * counted;
    const kind =
      reach === full ? 0 : reach < full ? (reach + spaces > full ? 1 : 3) : reach - spaces < full ? 2 : 3;
    if (kind < 3) fits.push({ kind, off: Math.abs(spaces - meant.intendedHoles), spaces });
  }
  fits.sort((a, b) => a.kind - b.kind || a.off - b.off || a.spaces - b.spaces);
  return fits.slice(0, 5).map(({ spaces }) => cut(spaces, 0, meant));
}

/** Cuts a wheel space by space, with one slip, and looks at what was made. */
function cut(spaces: number, once: number, { divisions, ratio, circle }: Meant): Reading {
  const full = ratio * circle;
  let teeth = 0;
  for (let place = once + spaces; place <= full; place += spaces) teeth++;
  let last = once;
  for (let move = 0; move < divisions; move++) last += spaces;
  return {
    holesMoved: spaces,
    onceSpaces: once,
    teethCut: teeth,
    closingGapAngle: last > 2 * full ? null : (360 * (full - last)) / full,
  };
}
