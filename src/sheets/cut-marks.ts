import { type CardLayout, roomOf } from './card-layout.js';

/** Breadth and length of a mark, mm: long enough to be seen past the 5 mm that a printer leaves white. */
const BREADTH = 0.35;
const LENGTH = 10;
/** By how much what stands on a sheet is less high than it, mm: pages are cut to whole pixels. */
export const SHORT_OF_PAGE = 0.2;
/** A line so near the edge of the sheet is the edge. */
const EDGE = 0.2;

type Line = readonly [x1: number, y1: number, x2: number, y2: number];

/** Marks at the corners of the cards, along the lines to cut by and never within a card, as SVG in millimetres. */
export function cutMarks(layout: CardLayout): string {
  const { width, height } = layout.sheet;
  // A drawing as high as the paper would be taken for one that goes on to the next page.
  const shown = n(height - SHORT_OF_PAGE);
  const paths = marksOf(layout).map(([x1, y1, x2, y2]) => `<path d="M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}"/>`);
  return (
    `<svg class="marks" xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${shown}mm" ` +
    `viewBox="0 0 ${n(width)} ${shown}" aria-hidden="true" fill="none" stroke="#000" stroke-width="${BREADTH}">` +
    `${paths.join('')}</svg>`
  );
}

function marksOf(layout: CardLayout): Line[] {
  const { width, height } = layout.sheet;
  const rooms = layout.places.map((place) => roomOf(place, layout));
  const inACard = (x: number, y: number) =>
    rooms.some(
      ({ left, right, top, bottom }) =>
        x > left + EDGE && x < right - EDGE && y > top + EDGE && y < bottom - EDGE,
    );
  const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
  const lines = rooms.flatMap(({ left, right, top, bottom }) =>
    [left, right].flatMap((x) =>
      [top, bottom].flatMap((y) =>
        [-LENGTH, LENGTH].flatMap((reach): Line[] => [
          [x, y, within(x + reach, width), y],
          [x, y, x, within(y + reach, height)],
        ]),
      ),
    ),
  );
  const onEdge = ([x1, y1, x2, y2]: Line) =>
    (x1 === x2 && (x1 < EDGE || x1 > width - EDGE)) || (y1 === y2 && (y1 < EDGE || y1 > height - EDGE));
  const seen = lines.filter(
    (line) =>
      !onEdge(line) &&
      Math.abs(line[2] - line[0]) + Math.abs(line[3] - line[1]) > 1 &&
      !inACard((line[0] + line[2]) / 2, (line[1] + line[3]) / 2),
  );
  return [...new Map(seen.map((line) => [line.join(), line])).values()];
}

const n = (value: number): string => String(Number(value.toFixed(3)));
