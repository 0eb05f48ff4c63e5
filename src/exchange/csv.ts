/** By this a spreadsheet knows that the file is UTF-8. */
const MARK = '\uFEFF';
/** With one of these in front a cell would be worked out as a formula. */
const FORMULA = /^[\s\u00A0]*[=+\-@＝＋－＠\t\r]/;

/** Rows of cells as a file for a spreadsheet. */
export function csv(rows: readonly (readonly string[])[]): string {
  return MARK + rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/** What somebody typed: where it looks like a formula an apostrophe goes in front, by which it is taken as it stands. */
export function asText(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

function cell(text: string): string {
  return /[",;\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
