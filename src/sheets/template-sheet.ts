import { cautions } from '../lesson/cautions.js';
import type { Table } from '../reference/sheet.js';
import type { CheckBar } from '../reference/templates/check-bar.js';
import type { Piece, Template } from '../reference/templates/template.js';
import { demandGlyphs } from './glyphs.js';
import type { SheetHead, SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import type { Board } from './template-board.js';
import { layOut, type Printer } from './template-layout.js';
import { render } from './templates.js';

/** Templates to be cut by, and what the sheet says of itself. */
export interface TemplateSheet {
  readonly head: SheetHead;
  readonly title: string;
  readonly template: Template;
  readonly bar: CheckBar;
  readonly sources: readonly string[];
  /** Of its making, as it is to be read. */
  readonly date: string;
  /** What one printer makes of each piece, where its scale is known. */
  readonly reports?: readonly string[] | undefined;
  /** For that printer alone: the drawing is stretched so that it comes out right there. */
  readonly correctedFor?: Printer | undefined;
}

const PAGES = 'template-page';

/**
 * Drawings at one fixed scale, each page with bars to measure; what a page has no room for is shared out over several.
 *
 * @throws {InputError} for a character that cannot be printed, or values that make no drawing
 */
export function templateSheetHtml(sheet: TemplateSheet, style: SheetStyle): string {
  const { head, title, template, sources, date, reports, correctedFor } = sheet;
  demandGlyphs([head, title, template.conventions, sources, date, reports ?? []]);
  demandGlyphs(template.pieces.map(({ part, tables, notes }) => ({ part, tables, notes })));
  const { turned, boards } = layOut(sheet, style);
  const named = correctedFor ? `${title}, for one printer only` : title;
  return pageHtml({
    kind: 'template',
    title: `${named}: ${head.kit}`,
    style,
    head: { ...head, course: head.club || head.course },
    foot: `${head.kit} · made ${date}`,
    parts: [{ page: PAGES, head: named }],
    turned,
    body: render('template-sheet', {
      page: PAGES,
      title: named,
      pieces: template.pieces.map((piece, at) => ({
        heading: (boards[at] ?? []).length === 0 ? { first: at === 0, part: piece.part } : undefined,
        boards: (boards[at] ?? []).map((board, page) => boardView(board, piece, at === 0 && page === 0)),
        tiled: (boards[at] ?? []).length > 1,
        report: reports?.[at] ?? '',
        tables: piece.tables.map(tableView),
        notes: piece.notes,
        conventions: at === 0 ? template.conventions : [],
      })),
      sources,
      cautions: template.cautions.map((name) => cautions[name]),
    }),
  });
}

const boardView = ({ drawing, tile = '' }: Board, { part }: Piece, first: boolean) => ({
  first,
  part,
  tile,
  svg: drawing.svg,
});

function tableView({ title = '', note = '', columns, rows }: Table) {
  return {
    title,
    note,
    columns,
    rows: rows.map(({ cells }) => ({
      cells: cells.map((cell, at) => ({
        text: typeof cell === 'string' ? cell : cell.text,
        kind: columns[at]?.kind,
        box: columns[at]?.kind === 'box',
        head: at === 0,
      })),
    })),
  };
}
