import { describe, expect, it } from 'vitest';
import type { Extent } from '../../src/figures/drafting/marks.js';
import { drawingOf } from '../../src/figures/index.js';
import { templates } from '../../src/reference/templates/index.js';
import type { Piece } from '../../src/reference/templates/template.js';
import type { Board } from '../../src/sheets/template-board.js';
import { layOut, ordersFor } from '../../src/sheets/template-layout.js';
import { OVERLAP, registerMarks, tilingOf } from '../../src/sheets/template-tiles.js';
import { collisions } from '../figures/collisions.js';
import { kits } from '../lesson/lessons.js';
import { byRule, classWheel, large, others, small } from '../reference/template-jobs.js';
import { sheetOf, styleName, styles } from './template-sheets.js';

const JOBS = [classWheel, byRule, large, small, ...others];
describe.each(styles.map((style) => [styleName(style), style] as const))('on %s', (_, style) => {
  const each = templates.flatMap(({ name }) =>
    // Only the plates hang on the kit.
    (name === 'division-plate' ? kits : kits.slice(0, 1)).flatMap((kit) =>
      [undefined, style.units === 'mm' ? { x: 0.95, y: 1.03 } : { x: 1.02, y: 0.96 }].map((printer) => ({
        name,
        kit,
        printer,
      })),
    ),
  );

  it.each(each)(
    '$name for $kit.kit, on a printer of $printer: fits, and no label touches anything',
    (how) => {
      const { name, kit, printer } = how;
      const sheet = sheetOf(name, { units: style.units, kit, jobs: JOBS }, printer);
      const { turned, boards } = layOut(sheet, style);
      const orders = ordersFor(sheet, style, turned);
      for (const [at, { piece, setting }] of orders.entries()) {
        const own = ownLabels(piece, style.units, setting.labelSize);
        for (const board of boards[at] ?? []) {
          expect(board.drawing.width).toBeLessThanOrEqual(setting.width + 1e-6);
          expect(board.drawing.height).toBeLessThanOrEqual(setting.height + 1e-6);
          expect(collisionsOn(board, own)).toEqual([]);
        }
      }
    },
  );
});

/** What the drawing itself says: where it is shared out, a page’s edge may run through that. */
function ownLabels({ drawings }: Piece, units: 'mm' | 'inch', labelSize: number): ReadonlySet<string> {
  const style = { labelSize, units, maxWidth: Number.POSITIVE_INFINITY };
  return new Set(
    drawings.flatMap(({ figure, given }) =>
      drawingOf(figure, { ...given }, style).marks.labels.map(({ text }) => text),
    ),
  );
}

function collisionsOn({ drawing, tile }: Board, own: ReadonlySet<string>): string[] {
  const found = collisions(drawing.marks);
  return tile === undefined
    ? found
    : found.filter((fault) => ![...own].some((text) => fault.includes(`“${text}”`)));
}

describe('a drawing shared out over pages', () => {
  const box: Extent = { left: -170, right: 190, top: -150, bottom: 160 };
  const room = { width: 150, height: 140 };
  const tiling = tilingOf(box, room);
  const { tiles, rows, columns } = tiling;

  it('takes as few as may be, none larger than its room', () => {
    expect([rows, columns, tiles.length]).toEqual([3, 3, 9]);
    for (const { window } of tiles) {
      expect(window.right - window.left).toBeLessThanOrEqual(room.width + 1e-9);
      expect(window.bottom - window.top).toBeLessThanOrEqual(room.height + 1e-9);
    }
  });

  it('is all there, and neighbours share a strip', () => {
    expect(Math.min(...tiles.map(({ window }) => window.left))).toBe(box.left);
    expect(Math.max(...tiles.map(({ window }) => window.right))).toBeCloseTo(box.right, 9);
    expect(Math.max(...tiles.map(({ window }) => window.bottom))).toBeCloseTo(box.bottom, 9);
    const at = (name: string) => tiles.find((tile) => tile.name === name)?.window as Extent;
    expect(at('A1').right - at('A2').left).toBeCloseTo(OVERLAP, 9);
    expect(at('B2').bottom - at('C2').top).toBeCloseTo(OVERLAP, 9);
  });

  it('has two marks or more that neighbours both show, far apart', () => {
    const marks = registerMarks(tiling);
    const shown = ({ window }: (typeof tiles)[number]) =>
      marks.filter(
        ({ x, y }) =>
          x - 5 >= window.left && x + 5 <= window.right && y - 5 >= window.top && y + 5 <= window.bottom,
      );
    for (const tile of tiles)
      for (const other of tiles) {
        const apart = Math.abs(tile.row - other.row) + Math.abs(tile.column - other.column);
        if (apart !== 1) continue;
        const both = shown(tile).filter((mark) => shown(other).includes(mark));
        expect(both.length, `${tile.name} ${other.name}`).toBeGreaterThanOrEqual(2);
        const span = Math.max(
          ...both.map((a) => Math.max(...both.map((b) => Math.hypot(a.x - b.x, a.y - b.y)))),
        );
        expect(span, `${tile.name} ${other.name}`).toBeGreaterThan(80);
      }
  });

  it('is left whole where it fits', () => {
    expect(tilingOf({ left: 0, right: 150, top: 0, bottom: 140 }, room).tiles).toHaveLength(1);
  });
});
