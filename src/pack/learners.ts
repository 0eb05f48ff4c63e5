import { ContentError, type Diagnostic, type Position } from '../diagnostics/diagnostic.js';
import { nearest } from '../diagnostics/suggest.js';
import { missingGlyphs } from '../sheets/glyphs.js';
import { readListText, shownAs } from './list-text.js';
import { type Row, readRows } from './rows.js';

/** Somebody in the class. Two may have the same name. */
export interface Learner {
  readonly name: string;
  /** The line of the list on which the name stands, from 1. */
  readonly row: number;
}

const MOST_LEARNERS = 10_000;
const LONGEST_NAME = 80;
/** What the column of names may be called, the likeliest first. */
const HEADINGS = ['name', 'full name', 'learner'];
const SEPARATORS = [',', ';', '\t'];
/** Control characters, and those that turn the direction of the text after them. */
const UNPRINTABLE = /[\p{Cc}\u2028-\u202E\u2066-\u2069]/u;

/**
 * Reads a list of learners as a spreadsheet saves it: separated by commas, semicolons or tabs, with a column
 * called `name`, or with nothing but names.
 *
 * @throws {CommandError} no such file; {MachineError} it may not be read;
 *   {ContentError} with every fault and its place
 */
export function readLearners(file: string): Learner[] {
  const text = readListText(file, 'learners');
  const { rows, strayQuotes } = readRows(text, separatorOf(text), MOST_LEARNERS + 2);
  const faults: Diagnostic[] = [];
  const fault = (what: string, message: string, start: Position, ...hints: string[]) =>
    faults.push({ severity: 'error', rule: `learners/${what}`, message, file, start, hints });

  for (const start of strayQuotes)
    fault(
      'quote',
      'this quotation mark does not enclose a whole cell',
      start,
      'Enclose the whole cell, and write a quotation mark inside it twice.',
    );
  const { column, from } = columnOfNames(rows[0]);
  const top = { line: 1, column: 1 };
  if (column === undefined)
    fault('column', 'no column is called name', rows[0]?.place(0) ?? top, ...adviceOn(rows[0]?.cells ?? []));
  else if (rows.length <= from && faults.length === 0)
    fault('none', 'there is no learner in this list', top, 'Write one name on each line.');

  // A comma in a name that is not enclosed makes a cell that no column is for.
  const columns = from === 0 ? 1 : (rows[0]?.cells.length ?? 1);
  const learners: Learner[] = [];
  for (const row of column === undefined ? [] : rows.slice(from, from + MOST_LEARNERS)) {
    const start = row.place(column ?? 0);
    const cell = (row.cells[column ?? 0] ?? '').trim();
    const wrong = whyNot(cell);
    if (wrong) fault('name', wrong, start);
    else if (row.cells.slice(columns).some((other) => other.trim() !== ''))
      fault('name', 'there is more than a name on this line', start, ENCLOSE);
    else learners.push({ name: cell.replace(/\s+/g, ' ').normalize('NFC'), row: start.line });
  }
  const surplus = rows[from + MOST_LEARNERS];
  if (surplus)
    fault(
      'too-many',
      `the list has more than ${MOST_LEARNERS} learners`,
      surplus.place(0),
      'Print it in parts.',
    );

  if (faults.length > 0) throw new ContentError(faults, shownAs(file, text));
  return learners;
}

const ENCLOSE = 'Enclose a name that has a comma in quotation marks: "Brown, Ada".';

/** The separator with which the first line has a heading, else the one that it has most often. */
function separatorOf(text: string): string {
  const line = /\S.*/.exec(text)?.[0] ?? '';
  const splits = SEPARATORS.map((separator) => ({ separator, cells: line.split(separator) }));
  const headed = splits.find(({ cells }) => cells.some((cell) => HEADINGS.includes(heading(cell))));
  const [most] = splits.sort((a, b) => b.cells.length - a.cells.length);
  return (headed ?? most)?.separator ?? ',';
}

/** A heading as it is compared: `Full_Names` is `full name`. */
function heading(cell: string): string {
  const words = cell.replace(/["\s_-]+/g, ' ').trim();
  return words.toLowerCase().replace(/s$/, '');
}

/** Where the names stand, and the row from which they do. */
function columnOfNames(first: Row | undefined): { column: number | undefined; from: number } {
  const cells = (first?.cells ?? []).map(heading);
  const [column] = HEADINGS.map((name) => cells.indexOf(name)).filter((at) => at >= 0);
  if (column !== undefined) return { column, from: 1 };
  return { column: cells.filter((cell) => cell !== '').length > 1 ? undefined : 0, from: 0 };
}

function adviceOn(cells: readonly string[]): string[] {
  const meant = cells.find((cell) => nearest(heading(cell), HEADINGS) !== undefined);
  return [
    meant === undefined
      ? 'Write the word name at the top of the column that holds the names.'
      : `Is it the column ${JSON.stringify(meant.trim())}? Call that one name.`,
    ENCLOSE,
  ];
}

function whyNot(name: string): string | undefined {
  if (name === '') return 'the name is missing';
  if (UNPRINTABLE.test(name)) return 'the name holds a character that cannot be printed';
  const [missing] = missingGlyphs(name);
  if (missing !== undefined) return `no typeface here has the character “${missing}”`;
  const length = [...name].length;
  return length > LONGEST_NAME ? `the name has ${length} characters; ${LONGEST_NAME} at most` : undefined;
}
