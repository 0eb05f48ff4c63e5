import { point } from '../figures/drafting/point.js';
import type { Drawing, FigureStyle } from '../figures/figure.js';
import { drawingOf } from '../figures/index.js';
import { Pen } from '../figures/pen.js';
import type { CheckBar } from '../reference/templates/check-bar.js';
import type { Piece } from '../reference/templates/template.js';
import type { TemplateSetting } from './template-setting.js';
import { columnWidth, drawStrip, drawUprightBar } from './template-strip.js';
import { drawTileMarks, type Tile, type Tiling, tilingOf } from './template-tiles.js';

/** Between copies, and between a drawing and the strip under it, mm. */
const GAP = 5;

/** What is drawn on one page. */
export interface Board {
  readonly drawing: Drawing;
  /** Which part of the piece it shows, where that is shared out; and in how many. */
  readonly tile?: string;
}

export interface BoardOrder {
  readonly piece: Piece;
  readonly setting: TemplateSetting;
  readonly units: FigureStyle['units'];
  readonly bar: CheckBar;
  readonly sentences: readonly string[];
  /** What 1 mm that is drawn comes out as, where the drawing is stretched to make up for it. */
  readonly printer?: { readonly x: number; readonly y: number } | undefined;
}

/** The pages of one piece, each with its bars: one where it has room, else as many as it takes, or none. */
export function boardsOf(order: BoardOrder): Board[] {
  const { piece, setting, units, printer = { x: 1, y: 1 } } = order;
  const style: FigureStyle = { labelSize: setting.labelSize, units, maxWidth: Number.POSITIVE_INFINITY };
  // What is stretched on the paper has so much less room there.
  const page = { width: setting.width * printer.x, height: setting.height * printer.y };
  const drawings = piece.drawings.map(({ figure, given }) => drawingOf(figure, given, style));
  const room = roomFor(order, style, page);
  const whole = drawings.find(({ width, height }) => width <= room.width && height <= room.height);
  if (whole) return [{ drawing: singleBoard(order, style, page, whole) }];
  if (piece.wholeOnly) return [];
  const large = drawings.at(-1) as Drawing;
  // The key takes room as well; how much it takes hangs on how many pages there are.
  let tiling = tilingOf(large.content.box, room);
  for (let round = 0; round < 5; round++) {
    const next = tilingOf(large.content.box, roomFor(order, style, page, tiling));
    if (next.tiles.length === tiling.tiles.length) break;
    tiling = next;
  }
  return tiling.tiles.map((tile) => ({
    drawing: tileBoard(order, style, page, { large, tiling, tile }),
    tile: `${tile.name} of ${tiling.tiles.length}`,
  }));
}

interface Room {
  readonly width: number;
  readonly height: number;
}

/** What bars and words leave of a page. */
function roomFor(order: BoardOrder, style: FigureStyle, page: Room, tiling?: Tiling): Room {
  const trial = new Pen(style);
  const own = tiling?.tiles[0];
  drawStrip(
    trial,
    { ...stripOf(order), tiling: tiling && own ? { all: tiling, own } : undefined },
    point(columnWidth(trial), 0),
    page.width,
  );
  return {
    width: page.width - columnWidth(trial) - 2,
    height: page.height - trial.extent.bottom - GAP - 2,
  };
}

const stripOf = ({ bar, sentences }: BoardOrder) => ({ bar, sentences });

function singleBoard(order: BoardOrder, style: FigureStyle, page: Room, drawing: Drawing): Drawing {
  const pen = new Pen(style);
  drawUprightBar(pen, order.bar);
  const room = roomFor(order, style, page);
  const { box } = drawing.content;
  const cell = { width: drawing.width + GAP, height: drawing.height + GAP };
  const columns = Math.max(1, Math.floor((room.width + GAP) / cell.width));
  const rows = Math.max(1, Math.floor((room.height + GAP) / cell.height));
  const copies = Math.min(order.piece.copies ?? 1, columns * rows);
  const across = Math.min(columns, Math.ceil(Math.sqrt(copies)));
  const start = columnWidth(pen) + Math.max(0, (room.width + GAP - across * cell.width) / 2);
  for (let copy = 0; copy < copies; copy++) {
    const left = start + (copy % across) * cell.width;
    const top = Math.floor(copy / across) * cell.height;
    pen.place(drawing, point(left - box.left, top - box.top));
  }
  const foot = Math.max(Math.ceil(copies / across) * cell.height, order.bar.length + GAP);
  drawStrip(pen, stripOf(order), point(columnWidth(pen), foot), page.width);
  return pen.finish(drawing.label, drawing.scale, order.printer);
}

function tileBoard(
  order: BoardOrder,
  style: FigureStyle,
  page: Room,
  how: { readonly large: Drawing; readonly tiling: Tiling; readonly tile: Tile },
): Drawing {
  const { large, tiling, tile } = how;
  const pen = new Pen(style);
  drawUprightBar(pen, order.bar);
  const { window } = tile;
  const left = columnWidth(pen);
  const at = point(left - window.left, -window.top);
  const height = window.bottom - window.top;
  pen.place(large, at, { left, top: 0, right: left + window.right - window.left, bottom: height });
  drawTileMarks(pen, tiling, tile, at);
  const strip = { ...stripOf(order), tiling: { all: tiling, own: tile } };
  drawStrip(pen, strip, point(left, Math.max(height, order.bar.length) + GAP), page.width);
  return pen.finish(`${large.label} Sheet ${tile.name}.`, large.scale, order.printer);
}
