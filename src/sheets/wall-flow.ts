import type { WallHeights } from './wall-heights.js';

/** A table, or short ones side by side, as far as their place on a page goes. */
export interface Placed<T extends PlacedTable = PlacedTable> {
  readonly across: number;
  readonly side: boolean;
  readonly whole: boolean;
  readonly apart: boolean;
  /** Other tables stand before it. */
  readonly follows: boolean;
  readonly tables: readonly T[];
}

export interface PlacedTable {
  readonly title: string;
  readonly note: string;
  /** Most lines of a head, its unit with it, and of a row. */
  readonly headLines: number;
  readonly rowLines: number;
  readonly rows: readonly { readonly strong: boolean }[];
}

/** How far a sheet has come: pages begun, how far down the last one is used, mm, and rows or tables of a group on it. */
export interface Place {
  readonly pages: number;
  readonly used: number;
  readonly onPage: number;
}

/** Rows that stand with the end of a sheet, and in how many columns. */
export interface Company {
  readonly count: number;
  readonly across: number;
}

/** Where groups of tables come to on pages of a height, reckoned; a browser may put a row more on a page, or less. */
export class WallFlow {
  constructor(
    private readonly heights: WallHeights,
    private readonly page: number,
  ) {}

  /** Where a group ends that begins at a place. */
  after(place: Place, group: Placed): Place {
    const start = group.apart ? { ...place, pages: place.pages + 1, used: 0 } : place;
    return group.side ? this.afterSide(start, group) : this.afterRun(start, group);
  }

  private afterSide({ pages, used }: Place, { tables, across }: Placed): Place {
    let left = tables.map((table) => this.heightOf(table, table.rows.length));
    let place = { pages, used, onPage: left.length };
    for (;;) {
      const fit = this.inColumns(left, this.page - place.used, across);
      if (fit === left.length) {
        const total = left.reduce((sum, height) => sum + height, 0);
        return { ...place, used: place.used + Math.max(...left, (UNEVEN * total) / across) };
      }
      left = left.slice(Math.max(place.used > 0 ? 0 : 1, fit));
      place = { pages: place.pages + 1, used: 0, onPage: left.length };
    }
  }

  /** How many of such heights, in their order, go into columns, none broken. */
  private inColumns(left: readonly number[], room: number, across: number): number {
    let [column, filled] = [1, 0];
    for (const [at, height] of left.entries()) {
      if (filled + height > room) [column, filled] = [column + 1, 0];
      if (column > across || height > room) return at;
      filled += height;
    }
    return left.length;
  }

  private afterRun(start: Place, { tables: [table], across, whole }: Placed): Place {
    if (!table) return start;
    const row = this.rowOf(table);
    let place = { ...start, onPage: table.rows.length };
    if (whole && place.used + this.heightOf(table, place.onPage / across) > this.page)
      place = { ...place, pages: place.pages + 1, used: 0 };
    let above = this.heights.above(table) + this.headsOf(table);
    for (;;) {
      const fit = Math.max(0, Math.floor((this.page - place.used - above) / row)) * across;
      if (place.onPage <= fit || (place.used === 0 && fit === 0))
        return {
          ...place,
          used: place.used + above + Math.ceil(place.onPage / across) * row + this.heights.gap,
        };
      if (fit > 0) above = this.headsOf(table);
      place = { pages: place.pages + 1, used: 0, onPage: place.onPage - fit };
    }
  }

  /**
   * A group in so many columns, at most its own, that a browser repeats the heads above each: it does so only where they
   * take no more than a quarter of the first. What is left of a page may be too low for that, and the next is not.
   */
  withHeads<T extends Placed>(group: T, place: Place): T {
    const [table] = group.tables;
    if (!table || group.side || group.across === 1) return group;
    const rows = table.rows.length;
    const isMoved =
      group.apart || (group.whole && place.used + this.heightOf(table, rows / group.across) > this.page);
    const under = (used: number) => this.page - used - this.heights.above(table);
    // Evened out before the heads are there a second time.
    const height = (room: number, across: number) =>
      Math.min(room, (this.headsOf(table) + rows * this.rowOf(table)) / across);
    const need = HEADS * this.headsOf(table);
    const room = under(isMoved ? 0 : place.used);
    if (height(room, group.across) >= need) return group;
    if (group.follows && height(under(0), group.across) >= need) return { ...group, apart: true };
    let across = group.across - 1;
    while (across > 1 && height(room, across) < need) across--;
    return { ...group, across };
  }

  /**
   * How many of the last group’s rows (or of its tables side by side) are to begin a page with what stands at the end,
   * which has no room where they end: enough to be company, no more than have room. In one column where they are too few
   * to keep their heads in more. None where so few have room that the end had better be broken.
   */
  company(group: Placed, onPage: number, end: number): Company {
    const { across } = group;
    const [table] = group.tables;
    if (group.side || !table) return { count: across, across };
    const [heads, row] = [this.headsOf(table), this.rowOf(table)];
    const least = across > 1 ? Math.ceil(((HEADS - 1 / across) * heads) / row) : LEAST;
    const most = Math.floor((this.page - end - heads - this.heights.gap) / row);
    if (most < LEAST) return { count: 0, across };
    if (most < least) return { count: most, across: 1 };
    return { count: Math.min(most * across, Math.max(least * across, Math.ceil(onPage / 3))), across };
  }

  private headsOf({ headLines }: PlacedTable): number {
    return this.heights.heads(headLines);
  }

  /** A row as high as the rows are on the average. */
  private rowOf({ rows, rowLines }: PlacedTable): number {
    const strong = rows.filter((row) => row.strong).length / Math.max(1, rows.length);
    return this.heights.row(rowLines) + strong * this.heights.strong;
  }

  private heightOf(table: PlacedTable, rows: number): number {
    const { heights } = this;
    return heights.above(table) + this.headsOf(table) + Math.ceil(rows) * this.rowOf(table) + heights.gap;
  }
}

/** How many times their height heads need in a column, to be repeated above the next; with a little to spare. */
const HEADS = 4.2;
/** Tables side by side do not come out even. */
const UNEVEN = 1.15;
/** Rows that are company for what stands at the end. */
const LEAST = 3;
