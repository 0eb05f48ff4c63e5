import { describe, expect, it } from 'vitest';
import { type Column, figures, type Table, words } from '../../src/reference/sheet.js';
import { type Room, WallHeights } from '../../src/sheets/wall-heights.js';
import { setTables } from '../../src/sheets/wall-table.js';
import { setTable, sideBySide } from '../../src/sheets/wall-widths.js';

const A4: Room = { print: 'plain', width: 178, height: 257 };
const ROUND = { machine: '', conventions: ['A rule.'], sources: 'A book', cautions: ['Mind.'], beside: true };

const table = (
  rows: number,
  columns: readonly Column[] = [figures('Teeth'), figures('Blank', 'mm')],
): Table => ({
  columns,
  rows: Array.from({ length: rows }, (_, at) => ({
    cells: [String(at + 2), ...columns.slice(1).map(() => '10.00')],
  })),
});
const set = (...tables: Table[]) => setTables(tables, A4, ROUND);
const rowsOf = ({ groups }: ReturnType<typeof set>) =>
  groups.map((group) => group.tables.map(({ rows }) => rows.length));

describe('heads', () => {
  it('are broken into lines no wider than what stands below', () => {
    const { heads } = setTable(table(3, [figures('Nearest standard module', 'mm')]), 'plain');
    expect(heads).toEqual([['Nearest', 'standard', 'module']]);
  });

  it('stay on a line where there is room', () => {
    const wide = { columns: [words('The first move')], rows: [{ cells: ['forward 12 on 27, back'] }] };
    expect(setTable(wide, 'plain').heads).toEqual([['The first move']]);
  });
});

it('as many tables stand side by side as the page is wide', () => {
  expect([200, 120, 80, 50, 10].map((width) => sideBySide(width, 178))).toEqual([1, 1, 2, 3, 4]);
});

describe('a narrow table', () => {
  it('runs on in columns', () => {
    expect(set(table(90)).groups[0]?.across).toBe(4);
  });

  it('keeps to one where its heads would take too much of each', () => {
    expect(set(table(4)).groups[0]?.across).toBe(1);
  });

  it('is ruled off before each fifth count, whatever the first is', () => {
    const rows = set(table(20)).groups[0]?.tables[0]?.rows ?? [];
    const before = rows.flatMap(({ ruled, cells }) => (ruled ? [Number(cells[0]?.text) + 1] : []));
    expect(before).toEqual([5, 10, 15, 20]);
  });

  it('stands beside another that is short, both whole', () => {
    const { groups } = set(table(10), table(12), table(8));
    expect(groups).toMatchObject([{ across: 3, side: true }]);
  });
});

describe('what stands at the end', () => {
  const wide = [words('Words'), ...Array.from({ length: 6 }, () => figures('A long head of a column'))];
  const heights = new WallHeights(A4);
  const end = heights.colophon(ROUND.sources, ROUND.cautions, true);
  const full = Math.floor(
    (A4.height - heights.opening('', ROUND.conventions) - heights.heads(6)) / heights.row(),
  );

  it('leaves the rows as they are where it has room', () => {
    expect(rowsOf(set(table(full - Math.ceil(end / heights.row()) - 4, wide)))).toHaveLength(1);
  });

  it('takes rows to the next page where it has none', () => {
    const [kept, taken] = rowsOf(set(table(full, wide)));
    expect((kept?.[0] ?? 0) + (taken?.[0] ?? 0)).toBe(full);
    expect(taken?.[0]).toBeGreaterThanOrEqual(3);
    expect(set(table(full, wide)).groups[1]?.apart).toBe(true);
  });

  it('is broken itself where it is as long as a page', () => {
    const long = setTables([table(full, wide)], A4, {
      ...ROUND,
      sources: 'A book; '.repeat(900),
      beside: false,
    });
    expect(long).toMatchObject({ long: true });
    expect(long.groups).toHaveLength(1);
  });
});
