import { InputError } from '../diagnostics/errors.js';
import type { Extent } from '../figures/drafting/marks.js';
import { type Point, point } from '../figures/drafting/point.js';
import type { Pen } from '../figures/pen.js';

/** Two neighbours both show a strip so wide, mm. */
export const OVERLAP = 16;
/** The mark that one is laid over the other by, mm. */
const MARK = { radius: 2.5, arm: 5 } as const;
/** How far the marks at the ends of a seam stand in from the edge of the drawing, mm. */
const INSET = 7;

/** A part of a drawing that has a page of its own. */
export interface Tile {
  /** Row by letter, column by number: `A2`. */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** What is seen of the drawing, in its own mm. */
  readonly window: Extent;
}

/** A drawing shared out over pages. */
export interface Tiling {
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
  /** Middles of the strips that neighbours share: upright ones by x, level ones by y. */
  readonly seams: { readonly x: readonly number[]; readonly y: readonly number[] };
  readonly box: Extent;
}

/** Rows are named by letters. */
const MOST_ROWS = 26;

/**
 * Shares a drawing out evenly over as few pages as it takes, each with so much room for it.
 *
 * @throws {InputError} for one that would take more than 26 rows of pages
 */
export function tilingOf(box: Extent, room: { readonly width: number; readonly height: number }): Tiling {
  const across = shares(box.left, box.right, room.width);
  const down = shares(box.top, box.bottom, room.height);
  if (down.parts.length > MOST_ROWS || across.parts.length > MOST_ROWS)
    throw new InputError(
      'size of the template',
      `${Math.ceil(box.right - box.left)} × ${Math.ceil(box.bottom - box.top)} mm`,
      `one that ${MOST_ROWS} rows of pages have room for`,
    );
  const tiles = down.parts.flatMap(([top, bottom], row) =>
    across.parts.map(([left, right], column) => ({
      name: `${String.fromCharCode(65 + row)}${column + 1}`,
      row,
      column,
      window: { left, right, top, bottom },
    })),
  );
  return {
    rows: down.parts.length,
    columns: across.parts.length,
    tiles,
    seams: { x: across.seams, y: down.seams },
    box,
  };
}

function shares(from: number, to: number, room: number) {
  const length = to - from;
  const count = length <= room ? 1 : Math.ceil((length - OVERLAP) / Math.max(1, room - OVERLAP));
  const step = count === 1 ? length : (length - OVERLAP) / count;
  const parts = Array.from({ length: count }, (_, at): [number, number] => [
    from + at * step,
    count === 1 ? to : from + (at + 1) * step + OVERLAP,
  ]);
  const seams = parts.slice(1).map(([start]) => start + OVERLAP / 2);
  return { parts, seams };
}

/** Every mark of the whole drawing, in its own mm: at both ends of each seam, and where two cross. */
export function registerMarks({ seams, box }: Tiling): Point[] {
  const ys = [box.top + INSET, ...seams.y, box.bottom - INSET];
  const xs = [box.left + INSET, ...seams.x, box.right - INSET];
  const all = [
    ...seams.x.flatMap((x) => ys.map((y) => point(x, y))),
    ...seams.y.flatMap((y) => xs.map((x) => point(x, y))),
  ];
  return [...new Map(all.map((at) => [`${at.x} ${at.y}`, at])).values()];
}

/** Draws what a page shows of the marks, and its own edge; `at` is where the drawing’s origin stands on the page. */
export function drawTileMarks(pen: Pen, tiling: Tiling, { window }: Tile, at: Point): void {
  const onPage = (p: Point): Point => point(p.x + at.x, p.y + at.y);
  for (const mark of registerMarks(tiling)) {
    const within =
      mark.x - MARK.arm >= window.left - 1e-6 &&
      mark.x + MARK.arm <= window.right + 1e-6 &&
      mark.y - MARK.arm >= window.top - 1e-6 &&
      mark.y + MARK.arm <= window.bottom + 1e-6;
    if (!within) continue;
    const { x, y } = onPage(mark);
    pen.circle('fine', point(x, y), MARK.radius);
    pen.line('dimension', point(x - MARK.arm, y), point(x + MARK.arm, y));
    pen.line('dimension', point(x, y - MARK.arm), point(x, y + MARK.arm));
  }
  const [a, b] = [onPage(point(window.left, window.top)), onPage(point(window.right, window.bottom))];
  pen.rectangle('dimension', { left: a.x, top: a.y, right: b.x, bottom: b.y });
}

const cellSize = (pen: Pen) => {
  const size = pen.style.labelSize;
  return { width: pen.textSize('A1', { weight: 600 }).width + 1.2 * size, height: 2 * size };
};

/** The room that a key takes. */
export function keySize(pen: Pen, { rows, columns }: Tiling) {
  const { width, height } = cellSize(pen);
  return { width: columns * width, height: rows * height };
}

/** Draws how the pages lie together, the one at hand thick: its left top corner at a place. Gives back its room. */
export function drawKey(pen: Pen, { rows, columns, tiles }: Tiling, own: Tile, at: Point): Extent {
  const cell = cellSize(pen);
  const boxOf = ({ row, column }: Tile): Extent => ({
    left: at.x + column * cell.width,
    right: at.x + (column + 1) * cell.width,
    top: at.y + row * cell.height,
    bottom: at.y + (row + 1) * cell.height,
  });
  for (const tile of tiles) {
    const { left, right, top, bottom } = boxOf(tile);
    const ours = tile.name === own.name;
    pen.rectangle('dimension', { left, right, top, bottom });
    pen.text(tile.name, point((left + right) / 2, (top + bottom) / 2), { weight: ours ? 600 : 400 });
  }
  const { left, right, top, bottom } = boxOf(own);
  pen.rectangle('outline', { left: left + 0.5, right: right - 0.5, top: top + 0.5, bottom: bottom - 0.5 });
  return {
    left: at.x,
    top: at.y,
    right: at.x + columns * cell.width,
    bottom: at.y + rows * cell.height,
  };
}
