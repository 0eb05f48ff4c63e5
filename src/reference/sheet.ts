import type { Kit } from '../kit/schema.js';
import type { CautionName } from '../lesson/cautions.js';
import type { Desk } from './desk.js';

/** A figure of a table, and the calculation it comes from. */
export interface Figure {
  /** As it is printed; its unit stands at the head of the column. */
  readonly text: string;
  readonly calculation: string;
  readonly given: Readonly<Record<string, unknown>>;
  /** Which found value it tells. */
  readonly find: string;
  /** That value, or the handbook's, as the cell prints it. */
  readonly write: (value: unknown) => string;
}

/** What stands in a place of a table: a figure, or words and counts that are where the row begins. */
export type Cell = Figure | string;

export interface Column {
  readonly head: string;
  /** Printed under the head; empty for counts and words. */
  readonly unit: string;
  /** `words` from the left; figures stand under one another by their points; `box` has one to tick in each row. */
  readonly kind: 'figures' | 'words' | 'box';
}

export interface Row {
  readonly cells: readonly Cell[];
  /** A row to be seen first, such as a quarter of the way round. */
  readonly strong?: boolean;
}

export interface Table {
  readonly title?: string;
  /** What holds for this table alone. */
  readonly note?: string;
  /** It begins a page, to be hung up by itself. */
  readonly apart?: true;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** A sheet for the wall. */
export interface ReferenceSheet {
  /** What the numbers are for: a head, a lathe; none where they hold for any. */
  readonly machine?: string;
  /** Every convention that the figures keep: half or included angle, spaces or holes, depth form. */
  readonly conventions: readonly string[];
  readonly cautions: readonly CautionName[];
  readonly tables: readonly Table[];
}

/** A piece of equipment. */
export interface Need {
  /** Such as `a dividing head with its plates`. */
  readonly words: string;
  in(kit: Kit): boolean;
}

/** A wheel that the class is going to cut. */
export interface WheelJob {
  readonly name: string;
  readonly teeth: number;
}

/** One of the sheets that can be made. */
export interface SheetKind {
  /** Such as `simple-indexing`. */
  readonly name: string;
  readonly title: string;
  /** What it is for, in a line. */
  readonly line: string;
  /** The equipment that it is made from; none where it is the same for every workshop. */
  readonly needs?: Need;
  /** Its tables, for a kit that has what it needs. */
  make(desk: Desk, kit: Kit, jobs: readonly WheelJob[]): ReferenceSheet;
}

/** A column of figures, in a unit or counted. */
export const figures = (head: string, unit = ''): Column => ({ head, unit, kind: 'figures' });

/** A column of boxes to tick. */
export const ticks = (head: string): Column => ({ head, unit: '', kind: 'box' });

/** A column of words. */
export const words = (head: string): Column => ({ head, unit: '', kind: 'words' });
