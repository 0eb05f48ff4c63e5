import { worked } from './sheets.js';

/** Where a row is looked up: on the metric sheets of the first workshop, in any table, unless it is said otherwise. */
export interface Place {
  readonly table?: string;
  readonly units?: 'mm' | 'inch';
}

export const textOf = (cell: unknown): string =>
  typeof cell === 'string' ? cell : (cell as { text: string }).text;

/** The cells of a row by its head, as they are printed. */
export function rowOf(name: string, head: string, { table, units = 'mm' }: Place = {}): string[] {
  const sheet = worked.find((one) => one.kind.name === name && one.units === units)?.sheet;
  const tables = sheet?.tables.filter(({ title }) => table === undefined || title === table) ?? [];
  const found = tables
    .flatMap(({ rows }) => rows)
    .find(({ cells: [first] }) => textOf(first).replaceAll('\u00A0', ' ') === head);
  return (found?.cells ?? []).map(textOf).map((cell) => cell.replaceAll('\u00A0', ' '));
}

/** Of a row, the cells that are asked about, by their places from 0. */
export function cellsOf(row: readonly string[], asked: object): Record<string, string | undefined> {
  return Object.fromEntries(Object.keys(asked).map((at) => [at, row[Number(at)]]));
}
