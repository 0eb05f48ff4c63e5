import { encode } from 'uqr';

/** Width of the quiet zone, in squares: what ISO/IEC 18004 asks. */
const QUIET = 4;

/** A QR code, to be drawn. */
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

/** Width of a code on paper, mm: half a millimetre to a square, so that any telephone reads it. */
const WIDTH = 14.5;

/** The same as a CSS picture, which stands at the foot of every page. */
export function codePicture(variant: string): string {
  const { size, path } = codeMark(variant);
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}mm" height="${WIDTH}mm" viewBox="0 0 ${size} ${size}">` +
    `<path d="${path}"/></svg>`;
  return `url("data:image/svg+xml,${encodeURIComponent(svg)}")`;
}

/** The black runs of a row, each a rectangle. */
function runs(row: readonly boolean[], y: number): string[] {
  const line = row.map((black) => (black ? '#' : ' ')).join('');
  return [...line.matchAll(/#+/g)].map(
    ({ index, 0: { length } }) => `M${index} ${y}h${length}v1h-${length}z`,
  );
}
