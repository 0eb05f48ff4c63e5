import { CsvError, parse } from 'csv-parse/sync';
import type { Position } from '../diagnostics/diagnostic.js';

/** One row of a list. */
export interface Row {
  readonly cells: readonly string[];
  /** Where a cell starts; where the row ends, when it has fewer cells. */
  place(column: number): Position;
}

/** Rows that were read, and where a quotation mark stands that does not fit. */
export interface Rows {
  readonly rows: readonly Row[];
  readonly strayQuotes: readonly Position[];
}

/** After so many stray quotation marks the rest is not looked at. */
const MOST_STRAY = 50;

/**
 * Reads comma-separated text, or text separated by another character; rows without any text are left out.
 *
 * @param text its lines end in `\n`
 * @param most so many rows are read, and no more
 */
export function readRows(text: string, separator: string, most: number): Rows {
  const strayQuotes = new Map<number, Position>();
  let met = 0;
  const onSkip = (error: CsvError | undefined, raw = '') => {
    const { code, lines, column } = error as CsvError & { lines: number; column: number };
    // The mark that opened the cell is the one to look at, however far off the next is; there may be none.
    const at = code.endsWith('OPENING_QUOTE') ? raw.length - 1 : cellStart(raw, separator, column);
    const row = placeIn(raw, 0, lines).line;
    if (!strayQuotes.has(row)) strayQuotes.set(row, placeIn(raw, at, lines));
    if (++met >= MOST_STRAY) throw error;
    return undefined;
  };
  let read: readonly { record: string[]; raw: string; info: { lines: number } }[] = [];
  try {
    read = parse(text, {
      delimiter: separator,
      record_delimiter: '\n',
      ltrim: true,
      relax_column_count: true,
      skip_records_with_empty_values: true,
      skip_records_with_error: true,
      on_skip: onSkip,
      raw: true,
      info: true,
      to: most,
    }) as unknown as typeof read;
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
  }
  return {
    rows: read.map(({ record, raw, info }) => ({
      cells: record,
      place: (column) => placeIn(raw, cellStart(raw, separator, column), info.lines),
    })),
    strayQuotes: [...strayQuotes.values()],
  };
}

/** Where a cell starts in the text of its row. */
function cellStart(raw: string, separator: string, column: number): number {
  let at = 0;
  let quoted = false;
  for (let before = column; before > 0 && at < raw.length; at++) {
    if (raw[at] === '"') quoted = !quoted;
    else if (raw[at] === separator && !quoted) before--;
  }
  return at;
}

/** The place in the file of a place in a row that ends on the line told. */
function placeIn(raw: string, at: number, lastLine: number): Position {
  const row = raw.replace(/\n$/, '');
  const start = Math.min(at, row.length);
  return {
    line: lastLine - (row.slice(start).split('\n').length - 1),
    column: start - row.slice(0, start).lastIndexOf('\n'),
  };
}
