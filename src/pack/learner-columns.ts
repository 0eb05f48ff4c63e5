import type { Row } from './rows.js';

/** What a list may tell of each learner. */
export type ColumnName = 'name' | 'seat' | 'print' | 'units';

/** What each column may be called, the likeliest first; a heading's last s is left out, as it is compared. */
const HEADINGS: Readonly<Record<ColumnName, readonly string[]>> = {
  name: ['name', 'full name', 'learner'],
  seat: ['seat', 'seat number', 'seat no.', 'seat no', 'place', 'desk', 'bench'],
  print: ['print', 'print size', 'size of print', 'text size', 'type size'],
  units: ['unit', 'unit of length', 'units of length', 'measure', 'system of unit', 'system of units'],
};

export const NAME_HEADINGS = HEADINGS.name;

/** Where each column stands; none for one that the list has not. */
export type Columns = Readonly<Partial<Record<ColumnName, number>>>;

/** A heading as it is compared: `Full_Names` is `full name`. */
export function heading(cell: string): string {
  const words = cell.replace(/["\s_-]+/g, ' ').trim();
  return words.toLowerCase().replace(/s$/, '');
}

/** Where the columns stand by the first row, and the row from which the learners do. */
export function columnsOf(first: Row | undefined): { readonly columns: Columns; readonly from: number } {
  const cells = (first?.cells ?? []).map(heading);
  const found = Object.entries(HEADINGS).flatMap(([column, names]) => {
    const [at] = names.map((name) => cells.indexOf(name)).filter((place) => place >= 0);
    return at === undefined ? [] : [[column, at] as const];
  });
  const columns: Columns = Object.fromEntries(found);
  if (columns.name !== undefined) return { columns, from: 1 };
  // A list without headings is one of names alone.
  const bare = found.length === 0 && cells.filter((cell) => cell !== '').length <= 1;
  return { columns: bare ? { name: 0 } : columns, from: 0 };
}

/** Columns with the heading of one that is read: which of the two holds, nobody can say. */
export function repeatedIn(first: Row | undefined, columns: Columns): readonly number[] {
  const cells = (first?.cells ?? []).map(heading);
  return Object.values(columns)
    .map((at) => cells.indexOf(cells[at] ?? '', at + 1))
    .filter((again) => again >= 0);
}
