import { encode } from 'uqr';

/** Width of the quiet zone, in squares: what ISO/IEC 18004 asks. */
const QUIET = 4;

/** A QR code as its template wants it. */
export interface CodeMark {
  /** Squares a side, the quiet zone included. */
  readonly size: number;
  /** The black ones, as an SVG path; a square is 1. */
  readonly path: string;
}

/**
 * A variant as a QR code, to be read by a telephone instead of being typed. A code of seven symbols and its units is
 * one of 21 squares a side without its quiet zone.
 *
 * @param variant letters, figures and hyphens
 */
export function codeMark(variant: string): CodeMark {
  // In capitals it takes the fewest squares, and it is read in either case.
  const { data, size } = encode(variant.toUpperCase(), { ecc: 'M', border: QUIET });
  return { size, path: data.flatMap(runs).join('') };
}

/** The black runs of a row, each a rectangle. */
function runs(row: readonly boolean[], y: number): string[] {
  const line = row.map((black) => (black ? '#' : ' ')).join('');
  return [...line.matchAll(/#+/g)].map(
    ({ index, 0: { length } }) => `M${index} ${y}h${length}v1h-${length}z`,
  );
}
