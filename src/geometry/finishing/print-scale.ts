/** What a printer makes of lengths: shares of the true length, and lengths in mm. */
export interface PrintedLength {
  /** What is printed for each mm that is drawn. */
  readonly scale: number;
  /** By how much that is over true, per cent; under 0 where it prints short. */
  readonly percent: number;
  /** What the length measures when it is printed. */
  readonly printed: number;
  /** How long it must be drawn, so that it measures right. */
  readonly drawn: number;
}

/** A length on a printer that makes `measured` of a bar of `bar`; each above 0. */
export function printedLength(length: number, measured: number, bar: number): PrintedLength {
  const scale = measured / bar;
  return { scale, percent: 100 * (scale - 1), printed: length * scale, drawn: length / scale };
}
