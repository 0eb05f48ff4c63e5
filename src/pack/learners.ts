import { ContentError, type Diagnostic, type Position } from '../diagnostics/diagnostic.js';
import { nearest } from '../diagnostics/suggest.js';
import { missingGlyphs, named } from '../reading/glyphs.js';
import type { SheetStyle } from '../sheets/model.js';
import type { UnitSystem } from '../units/format.js';
import { columnsOf, heading, NAME_HEADINGS, repeatedIn } from './learner-columns.js';
import { straysIn } from './learner-strays.js';
import { allowed, type Choice, chosen, PRINT, UNITS } from './learner-values.js';
import { readListText, shownAs } from './list-text.js';
import { readRows } from './rows.js';

/** Somebody in the class. Two may have the same name. */
export interface Learner {
  readonly name: string;
  /** The line of the list on which the name stands, from 1. */
  readonly row: number;
  /** As it is marked in the room: `12`, `B3`. */
  readonly seat?: string;
  /** Their own; the class's where it is not told. */
  readonly print?: SheetStyle['print'];
  readonly units?: UnitSystem;
}

const MOST_LEARNERS = 10_000;
const MOST_COLUMNS = 100;
const LONGEST_NAME = 80;
const LONGEST_SEAT = 12;
const SEPARATORS = [',', ';', '\t'];
/** Control characters, and those that turn letters round. */
const UNPRINTABLE = /[\p{Cc}\u2028\u2029\u202D\u202E]/u;
/** Marks that only tell which way a text runs: they come along with a copied name, and a page has its own. */
const WAYMARKS = /[\u061C\u200E\u200F\u202A-\u202C\u2066-\u2069]/g;

/**
 * Reads a list of learners as a spreadsheet saves it: separated by commas, semicolons or tabs, with a column
 * called `name` and, where wanted, `seat`, `print` and `units`, in any order; or with nothing but names.
 *
 * @throws {CommandError} no such file; {MachineError} it may not be read;
 *   {ContentError} with every fault and its place
 */
export function readLearners(file: string): Learner[] {
  const text = readListText(file, 'learners').replace(WAYMARKS, '');
  const { rows, strayQuotes } = readRows(text, separatorOf(text), MOST_LEARNERS + 2);
  const faults: Diagnostic[] = [];
  const fault = (what: string, message: string, start: Position, ...hints: string[]) =>
    faults.push({ severity: 'error', rule: `learners/${what}`, message, file, start, hints });

  if ((rows[0]?.cells.length ?? 0) > MOST_COLUMNS) {
    const hint = 'Keep the columns name, seat, print and units.';
    fault('column', `the list has more than ${MOST_COLUMNS} columns`, { line: 1, column: 1 }, hint);
    throw new ContentError(faults, shownAs(file, text));
  }
  for (const start of strayQuotes)
    fault(
      'quote',
      'this quotation mark does not enclose a whole cell',
      start,
      'Enclose the whole cell, and write a quotation mark inside it twice.',
    );
  const { columns, from } = columnsOf(rows[0]);
  const top = { line: 1, column: 1 };
  if (columns.name === undefined)
    fault('column', 'no column is called name', rows[0]?.place(0) ?? top, ...adviceOn(rows[0]?.cells ?? []));
  else if (rows.length <= from && faults.length === 0)
    fault('none', 'there is no learner in this list', top, 'Write one name on each line.');

  for (const at of from === 1 ? repeatedIn(rows[0], columns) : []) {
    const called = JSON.stringify((rows[0]?.cells[at] ?? '').trim());
    fault(
      'column',
      `there is a column ${called} already`,
      rows[0]?.place(at) ?? top,
      'Take one of them out.',
    );
  }
  for (const { at, heading: called, means } of from === 1 ? straysIn(rows, columns) : []) {
    const message = `is the column ${JSON.stringify(called.trim())} what they have for ${means}?`;
    fault('column', message, rows[0]?.place(at) ?? top, `Call it ${means}, or take it out.`);
  }

  // A comma in a name that is not enclosed makes a cell that no column is for.
  const width = from === 0 ? 1 : (rows[0]?.cells.length ?? 1);
  const learners: Learner[] = [];
  const { name: nameAt } = columns;
  for (const row of nameAt === undefined ? [] : rows.slice(from, from + MOST_LEARNERS)) {
    const before = faults.length;
    const cell = (column: number | undefined) => (row.cells[column ?? width] ?? '').trim();
    const choice = <T extends string>(of: Choice<T>, column: number | undefined): T | undefined => {
      const text = cell(column);
      const value = chosen(of, text);
      if (text !== '' && value === undefined)
        fault('value', `${JSON.stringify(text)} is no ${of.what}`, row.place(column ?? 0), allowed(of));
      return value;
    };
    const start = row.place(nameAt ?? 0);
    const name = cell(nameAt);
    const wrong = whyNot('name', name, LONGEST_NAME);
    if (wrong) fault('name', wrong, start);
    else if (row.cells.slice(width).some((other) => other.trim() !== ''))
      fault('name', 'there is more than a name on this line', start, ENCLOSE);
    const seat = cell(columns.seat);
    const wrongSeat = seat && whyNot('seat', seat, LONGEST_SEAT);
    if (wrongSeat) fault('seat', wrongSeat, row.place(columns.seat ?? 0));
    const print = choice(PRINT, columns.print);
    const units = choice(UNITS, columns.units);
    if (faults.length > before) continue;
    learners.push({
      name: plain(name),
      row: start.line,
      ...(seat === '' ? {} : { seat: plain(seat) }),
      ...(print === undefined ? {} : { print }),
      ...(units === undefined ? {} : { units }),
    });
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
  const headed = splits.find(({ cells }) => cells.some((cell) => NAME_HEADINGS.includes(heading(cell))));
  const [most] = splits.sort((a, b) => b.cells.length - a.cells.length);
  return (headed ?? most)?.separator ?? ',';
}

const plain = (text: string): string => text.replace(/\s+/g, ' ').normalize('NFC');

function adviceOn(cells: readonly string[]): string[] {
  const meant = cells.find((cell) => nearest(heading(cell), NAME_HEADINGS) !== undefined);
  return [
    meant === undefined
      ? 'Write the word name at the top of the column that holds the names.'
      : `Is it the column ${JSON.stringify(meant.trim())}? Call that one name.`,
    ENCLOSE,
  ];
}

function whyNot(what: string, text: string, most: number): string | undefined {
  if (text === '') return `the ${what} is missing`;
  const [unprintable] = UNPRINTABLE.exec(text) ?? [];
  if (unprintable !== undefined)
    return `the ${what} holds a character that cannot be printed: ${named(unprintable)}`;
  const [missing] = missingGlyphs(text);
  if (missing !== undefined) return `no typeface here has the character ${named(missing)}`;
  const length = [...text].length;
  return length > most ? `the ${what} has ${length} characters; ${most} at most` : undefined;
}
