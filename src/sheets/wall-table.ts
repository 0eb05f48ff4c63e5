import type { Column, Row, Table } from '../reference/sheet.js';
import { type Company, type Place, type Placed, WallFlow } from './wall-flow.js';
import { type Room, WallHeights } from './wall-heights.js';
import { setTable, sideBySide } from './wall-widths.js';

/** A rule under every so many rows leads the eye; a table of few rows needs none. */
const BAND = 5;
const FEW = 8;

/** Tables of no more than this share of a page are not broken; those of so few rows stand side by side. */
const SHORT = 0.65;

/** What stands round the tables of a sheet. */
interface Round {
  readonly machine: string;
  readonly conventions: readonly string[];
  readonly sources: string;
  readonly cautions: readonly string[];
  /** Sources and cautions stand beside each other. */
  readonly beside: boolean;
}

/** What is a little out must not leave the end alone on a page, mm. */
const SLACK = 6;

/**
 * Tables as they are set. One that is narrow runs on in two columns or more, its heads above each; short ones stand
 * side by side, each whole. So many rows of the last one go with what stands at the end that it is not alone on a page.
 */
export function setTables(tables: readonly Table[], room: Room, round: Round) {
  const heights = new WallHeights(room);
  const start: Place = { pages: 1, used: heights.opening(round.machine, round.conventions), onPage: 0 };
  const end = heights.colophon(round.sources, round.cautions, round.beside);
  const flow = new WallFlow(heights, heights.page);
  let place = start;
  const groups = grouped(tables, room, SHORT * heights.rows).map((group) => {
    const set = flow.withHeads(group, place);
    place = flow.after(place, set);
    return set;
  });
  const last = groups.at(-1);
  // A page may hold a row more than is reckoned, or less.
  const short = [-SLACK / 2, 0, SLACK]
    .map((more) => heights.page + more)
    .flatMap((page) => {
      const flow = new WallFlow(heights, page);
      const ended = groups.reduce((so, group) => flow.after(so, group), start);
      return !last || ended.used + end + SLACK <= page ? [] : [flow.company(last, ended.onPage, end + SLACK)];
    });
  const carry = short.reduce<Company | undefined>((a, b) => (a && a.count >= b.count ? a : b), undefined);
  return {
    groups: carry && last && carry.count > 0 ? [...groups.slice(0, -1), ...parted(last, carry)] : groups,
    // An end without room that no rows can go with is broken itself.
    long: carry?.count === 0,
    pages: place.pages + (place.used + end > heights.page ? 1 : 0),
    wide: groups.some((group) => group.tables.some(({ rowLines }) => rowLines > 1)),
  };
}

type TableView = ReturnType<typeof tableView> & { readonly rowLines: number };
type Group = Placed<TableView>;

function grouped(tables: readonly Table[], room: Room, short: number): Group[] {
  const groups: {
    across: number;
    short: boolean;
    whole: boolean;
    apart: boolean;
    follows: boolean;
    tables: TableView[];
  }[] = [];
  for (const table of tables) {
    const { heads, width } = setTable(table, room.print);
    const across = sideBySide(width, room.width);
    const view = { ...tableView(table, heads), rowLines: Math.ceil(width / room.width) };
    const last = groups.at(-1);
    const isShort = table.rows.length <= short && !table.apart;
    if (isShort && last?.short && across > 1 && last.across > 1) {
      last.tables.push(view);
      last.across = Math.min(last.across, across);
    } else {
      // The first may break, or its page would have nothing but what is told above it.
      const follows = groups.length > 0;
      const whole = follows && table.rows.length / across <= short;
      groups.push({ across, short: isShort, whole, apart: table.apart === true, follows, tables: [view] });
    }
  }
  // A short table by itself runs on in columns like a long one.
  return groups.map(({ short, ...group }) => ({
    ...group,
    across: short && group.tables.length > 1 ? Math.min(group.across, group.tables.length) : group.across,
    side: short && group.tables.length > 1,
  }));
}

/** The last group in two, the second of which begins a page: so many tables of those side by side, or rows. */
function parted(group: Group, { count, across }: Company): Group[] {
  if (group.side) {
    const at = Math.max(0, group.tables.length - count);
    return [
      ...(at > 0 ? [{ ...group, tables: group.tables.slice(0, at) }] : []),
      { ...group, apart: true, tables: group.tables.slice(at) },
    ];
  }
  const [table] = group.tables as [TableView];
  const at = table.rows.length - count;
  if (at < 2 * group.across) return [{ ...group, apart: true }];
  return [
    { ...group, tables: [{ ...table, rows: table.rows.slice(0, at) }] },
    {
      ...group,
      across,
      apart: true,
      tables: [{ ...table, title: '', note: '', rows: table.rows.slice(at) }],
    },
  ];
}

function tableView({ title = '', note = '', columns, rows }: Table, heads: readonly (readonly string[])[]) {
  const counted = rows.map(({ cells: [first] }) => (typeof first === 'string' ? Number(first) : Number.NaN));
  // Counts that follow one another are ruled off before each fifth of them, whatever the first is.
  const steady = counted.every((count, at) => Number.isInteger(count) && count - at === counted[0]);
  return {
    title,
    note,
    headLines: Math.max(...columns.map(({ unit }, at) => (heads[at]?.length ?? 0) + (unit === '' ? 0 : 1))),
    columns: columns.map((column, at) => ({ ...column, lines: heads[at] })),
    rows: rows.map((row, at) => ({
      strong: row.strong === true,
      ruled:
        rows.length > FEW && at + 1 < rows.length && ((steady ? (counted[at] ?? 0) : at) + 1) % BAND === 0,
      cells: cellsOf(row, columns),
    })),
  };
}

/** The first cell of a row is its head. */
function cellsOf({ cells }: Row, columns: readonly Column[]) {
  return cells.map((cell, at) => ({
    text: typeof cell === 'string' ? cell : cell.text,
    kind: columns[at]?.kind,
    box: columns[at]?.kind === 'box',
    head: at === 0,
  }));
}
