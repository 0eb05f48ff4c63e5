import type { Cell, Column, Table } from '../reference/sheet.js';
import type { SheetStyle } from './model.js';
import { textWidth } from './text-width.js';

/**
 * Sizes of the letters of a wall table and the room beside a column, mm, and more before words that follow figures, or
 * the two are read as one; as `reference.css` has them.
 */
const POINT = 25.4 / 72;
const SIZES = {
  plain: { text: 13 * POINT, head: 10 * POINT, gap: 3, before: 2 },
  large: { text: 18 * POINT, head: 16 * POINT, gap: 4.2, before: 2.8 },
} as const;
/** A box to tick, in sizes of the letters. */
const BOX = 1;
/** Never more tables side by side than this; a reader loses the row. */
const MOST = 4;
/** Between tables side by side, mm. */
export const BETWEEN = 10;

const textOf = (cell: Cell | undefined): string =>
  cell === undefined ? '' : typeof cell === 'string' ? cell : cell.text;

/** The widest cell of a column, mm; the first of a row is its head, in bold. */
function widest({ columns, rows }: Table, at: number, size: number): number {
  if (columns[at]?.kind === 'box') return BOX * size;
  return Math.max(
    0,
    ...rows.map(({ cells, strong }) => textWidth(textOf(cells[at]), size, at === 0 || strong ? 600 : 400)),
  );
}

/** Heads, each in as few lines as leave its column no wider than what stands in it; and how wide the whole is, mm. */
export function setTable(table: Table, print: SheetStyle['print']): { heads: string[][]; width: number } {
  const { text, head, gap, before } = SIZES[print];
  const set = table.columns.map((column, at) => setHead(column, widest(table, at, text), head));
  const { columns } = table;
  const apart = columns.filter(
    ({ kind }, at) => kind === 'words' && columns[at - 1]?.kind === 'figures',
  ).length;
  const width = set.reduce((sum, column) => sum + column.width + gap, apart * before - gap);
  return { heads: set.map(({ lines }) => lines), width };
}

function setHead({ head, unit }: Column, cells: number, size: number): { lines: string[]; width: number } {
  const wide = (words: string) => textWidth(words, size, 600);
  const words = unbroken(head).split(' ');
  const room = Math.max(cells, wide(unit), ...words.map(wide));
  const lines: string[] = [];
  for (const word of words) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && wide(longer) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return { lines, width: room };
}

/** How many tables of such a width stand side by side. */
export const sideBySide = (width: number, room: number): number =>
  Math.max(1, Math.min(MOST, Math.floor((room + BETWEEN) / (width * SLACK + BETWEEN))));

/** A browser rounds each column up to its own pixels. */
const SLACK = 1.02;

/** A figure and its unit stay on one line. */
export const unbroken = (text: string): string =>
  text.replaceAll(/(?<=\d) (?=(?:%|mm|in|m\/min|ft\/min)(?!\p{L}))/gu, '\u00A0');
