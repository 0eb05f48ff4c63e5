import type { ReferenceSheet } from '../reference/sheet.js';
import { asText, csv } from './csv.js';

/** The tables of a wall sheet for a spreadsheet, one under another; units stand in the heads. */
export function sheetCsv({ tables }: ReferenceSheet): string {
  const blocks = tables.map(({ title, columns, rows }) => [
    ...(title === undefined ? [] : [[title]]),
    columns.map(({ head, unit }) => (unit === '' ? head : `${head}, ${unit}`)),
    ...rows.map(({ cells }) =>
      cells.map((cell) => (typeof cell === 'string' ? asText(cell) : plain(cell.text))),
    ),
  ]);
  return csv(blocks.flatMap((rows, at) => (at === 0 ? rows : [[''], ...rows])));
}

/** A number as a spreadsheet reads it: its minus is the one of the keyboard. */
function plain(text: string): string {
  return /^−[\d.]+$/.test(text) ? text.replace('−', '-') : asText(text.replaceAll('\u00A0', ' '));
}
