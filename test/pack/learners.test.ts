import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { CommandError } from '../../src/diagnostics/errors.js';
import { printDiagnostics } from '../../src/diagnostics/print.js';
import { readLearners } from '../../src/pack/learners.js';
import { cpuTime } from '../cpu-time.js';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-learners-'));
const file = join(folder, 'class.csv');
afterAll(() => rmSync(folder, { recursive: true }));

function read(content: string | Uint8Array) {
  writeFileSync(file, content);
  return readLearners(file);
}

const names = (content: string | Uint8Array) => read(content).map(({ name }) => name);

/** What is printed for a list, without the path; empty for one in order. */
function faultsOf(content: string | Uint8Array): string {
  try {
    read(content);
    return '';
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    expect(error.diagnostics.length).toBeGreaterThan(0);
    return printDiagnostics(error.diagnostics, error.sources).replaceAll(`${folder}/`, '');
  }
}

const utf16 = (text: string, bigEndian = false): Buffer => {
  const bytes = Buffer.from(`\uFEFF${text}`, 'utf16le');
  return bigEndian ? bytes.swap16() : bytes;
};

describe('readLearners(file) reads what spreadsheets and editors write', () => {
  const both = ['Ada Brown', 'Zoë Ng'];
  it.each<[string, string | Uint8Array]>([
    ['a heading', 'name\nAda Brown\nZoë Ng\n'],
    ['no heading', 'Ada Brown\nZoë Ng'],
    ['a heading in another case, with blanks', ' NAME \n Ada  Brown\nZoë Ng \n'],
    ['other headings', 'Full_Names\nAda Brown\nZoë Ng'],
    ['a learner column', 'group,Learner\n1,Ada Brown\n2,Zoë Ng'],
    ['the name column rather than the learner column', 'learner,name\n17,Ada Brown\n18,Zoë Ng'],
    ['semicolons, with commas elsewhere', 'note, if any;name\na, b, c;Ada Brown\n;Zoë Ng\n'],
    ['tabs', 'name\tyear\nAda Brown\t1\nZoë Ng\t2\n'],
    ['Windows line ends, blank rows', '\r\nname,year\r\n,\r\nAda Brown,1\r\n\r\nZoë Ng,\r\n,\r\n'],
    ['old Mac line ends', 'name\rAda Brown\rZoë Ng\r'],
    ['mixed line ends', 'name\nAda Brown\r\nZoë Ng\r'],
    ['a byte order mark', '\uFEFFname\nAda Brown\nZoë Ng\n'],
    ['quoted cells', '"name","year"\n"Ada Brown","first, evening"\n"Zoë Ng","a ""late"" one"\n'],
    ['letters and accents apart', 'name\nAda Brown\nZoe\u0308 Ng\n'],
    ['UTF-16 as "Unicode text"', utf16('name\tyear\r\nAda Brown\t1\r\nZoë Ng\t2\r\n')],
    ['UTF-16, the high byte first', utf16('name\nAda Brown\nZoë Ng', true)],
  ])('%s', (_, content) => expect(names(content)).toEqual(both));

  it('keeps two of one name apart, by their row', () =>
    expect(read('name\nJohn Smith\n\n"Smith,\nJane"\nJohn Smith\n'.replace(',\n', ', '))).toEqual([
      { name: 'John Smith', row: 2 },
      { name: 'Smith, Jane', row: 4 },
      { name: 'John Smith', row: 5 },
    ]));

  it('reads a name of the scripts that the typefaces have, and one in quotation marks', () =>
    expect(names('name\nΑλέξης\nИван\n"Robert ""Bob"" Hill"\n')).toEqual([
      'Αλέξης',
      'Иван',
      'Robert "Bob" Hill',
    ]));

  it('reads a name that is written from right to left, as it is typed', () =>
    expect(names('name\nשרה כהן\n"علی\u200Cزاده، مریم"\nמרדכי (מוטי) בן־גוריון\n')).toEqual([
      'שרה כהן',
      'علی\u200Cزاده، مریم',
      'מרדכי (מוטי) בן־גוריון',
    ]));

  it('drops the marks of direction that come along with a copied name, wherever they stand', () =>
    expect(
      read(
        '\u200Fname,\u200Eseat,print\n\u202Bשרה כהן\u202C\u200F,\u200E12\u200E,\u2067large\u2069\n\u061Cفاطمة,,\n',
      ),
    ).toEqual([
      { name: 'שרה כהן', row: 2, seat: '12', print: 'large' },
      { name: 'فاطمة', row: 3 },
    ]));

  it.each([
    ['of commas', '"', ','],
    ['of tabs, as UTF-16', '', '\t'],
  ])('reads 10,000, with blank rows between: a file %s', (_, quote, by) => {
    const rows = Array.from({ length: 10_000 }, (_, at) => `${at + 1}${by}${quote}שרה כהן${quote}\r\n`);
    const text = `seat${by}name\r\n${rows.join(`${by}\r\n\r\n`)}`;
    const learners = read(by === '\t' ? utf16(text) : text);
    expect(learners).toHaveLength(10_000);
    expect(learners.at(-1)).toEqual({ name: 'שרה כהן', seat: '10000', row: 2 + 9_999 * 3 });
  });
});

describe('readLearners(file) points at what is wrong', () => {
  it.each<[string, string | Uint8Array, string]>([
    [
      'a name that no typeface can print',
      'name\nAda 李\n',
      'class.csv:2:1: error[learners/name] no typeface here has the character “李”',
    ],
    [
      'a comma in a name',
      'name\nBrown, Ada\n',
      'class.csv:2:1: error[learners/name] there is more than a name on this line',
    ],
    ['an empty name', 'group,name\n1,Ada\n2, \n', 'class.csv:3:3: error[learners/name] the name is missing'],
    ['a missing cell', 'group,name\n1,Ada\n2\n', 'class.csv:3:2: error[learners/name] the name is missing'],
    [
      'a long name',
      `name\n${'a'.repeat(81)}\n`,
      'class.csv:2:1: error[learners/name] the name has 81 characters',
    ],
    [
      'a control character',
      'name\nAda\u001B[31m\n',
      'class.csv:2:1: error[learners/name] the name holds a ch',
    ],
    [
      'a name on two lines',
      'a,name\n1,"Ada\nBrown"\n',
      'class.csv:2:3: error[learners/name] the name holds a ch',
    ],
    [
      'text turned round',
      'name\nAda\u202Enworb\n',
      'class.csv:2:1: error[learners/name] the name holds a character that cannot be printed: U+202E',
    ],
    [
      'text turned the other way',
      'seat,name\n1,\u202Dשרה\n',
      'class.csv:2:3: error[learners/name] the name holds a character that cannot be printed: U+202D',
    ],
    [
      'a character that is not seen',
      'name\nAda\uFEFFBrown\n',
      'class.csv:2:1: error[learners/name] no typeface here has the character U+FEFF',
    ],
    [
      'a column twice',
      'name,seat,Name\nAda,1,Ben\n',
      'class.csv:1:11: error[learners/column] there is a column "Name" already',
    ],
    [
      'a column twice that is not the name',
      'name,print,Print\nAda,,large\n',
      'class.csv:1:12: error[learners/column] there is a column "Print" already',
    ],
    [
      'an unclosed quotation mark before 10,000 rows',
      `name,seat\n"Ada,1\n${'Ben,2\n'.repeat(10_000)}`,
      'class.csv:2:1: error[learners/quote]',
    ],
    ['a Hebrew quotation mark inside a cell', 'name\nד"ר כהן\n', 'class.csv:2:2: error[learners/quote]'],
    [
      'a Hebrew Windows encoding',
      Buffer.from([...Buffer.from('name\n'), 0xf9, 0xf8, 0xe4]),
      'class.csv:2:1: error[learners/encoding]',
    ],
    [
      'an Arabic Windows encoding',
      Buffer.from([...Buffer.from('name\nA '), 0xc7, 0xe1, 0xda]),
      'class.csv:2:3: error[learners/encoding]',
    ],
    ['a row after one on two lines', 'name,a\nAda,"x\ny"\n,1\n', 'class.csv:4:1: error[learners/name]'],
    ['too many', `name\n${'Ada\n'.repeat(10_001)}`, 'class.csv:10002:1: error[learners/too-many]'],
    [
      'no name column',
      'surname;first\nBrown;Ada\n',
      'class.csv:1:1: error[learners/column] no column is called',
    ],
    ['a comma without a heading', 'Ada\nBrown, Zoë\n', 'class.csv:2:1: error[learners/name] there is more'],
    ['nothing', '', 'class.csv:1:1: error[learners/none]'],
    ['a heading alone', 'name\n', 'class.csv:1:1: error[learners/none]'],
    ['an unclosed quotation mark', 'a,name\n1,"Ada\n2,Bob\n', 'class.csv:2:3: error[learners/quote]'],
    ['one that closes at the next', 'name\n"Ada\nCy\n"Bob"\n', 'class.csv:2:1: error[learners/quote]'],
    ['one inside a cell', 'name\nRobert "Bob" Hill\n', 'class.csv:2:8: error[learners/quote]'],
    [
      'a Windows encoding',
      Buffer.from('name\nAda\nZo\xEB\n', 'latin1'),
      'class.csv:3:3: error[learners/encoding]',
    ],
    ['UTF-16 without its mark', Buffer.from('name', 'utf16le'), 'class.csv:1:2: error[learners/encoding]'],
    [
      'half a UTF-16 character',
      Buffer.concat([utf16('name\na'), Buffer.from([7])]),
      'class.csv:2:2: error[learners/enc',
    ],
    [
      'a workbook',
      Buffer.from('504b03041400060008000000210000', 'hex'),
      'class.csv:1:6: error[learners/encoding]',
    ],
    ['a file that is too large', 'a'.repeat(1_000_001), 'class.csv:1:1: error[learners/too-long]'],
  ])('%s', (_, content, message) => expect(faultsOf(content)).toContain(message));

  it('says how to cure an encoding', () =>
    expect(faultsOf(Buffer.from('name\nZo\xEB\n', 'latin1'))).toContain('choose "CSV UTF-8"'));

  it('says which heading may be meant', () =>
    expect(faultsOf('year,nane\n1,Ada\n')).toContain('Is it the column "nane"? Call that one name.'));

  it('tells all faults at once, in order', () => {
    const printed = faultsOf(`name,a\n,1\nAda "x",2\n${'b'.repeat(99)},3\nCy,4\n"Dora`);
    expect(printed.match(/^class.csv:\d+/gm)).toEqual([2, 3, 4, 6].map((line) => `class.csv:${line}`));
  });

  it('shows the line, but sends no control character to the terminal', () => {
    const printed = faultsOf('name\nAda\u001B[31m\n');
    expect(printed).toContain('2 | Ada');
    expect(printed).not.toContain('\u001B');
  });

  it('leaves alone a column twice that it does not read', () =>
    expect(names('note,name,note\n1,Ada,2\n')).toEqual(['Ada']));

  it('says that there is no such file', () => {
    expect(() => readLearners(join(folder, 'none.csv'))).toThrow(CommandError);
    expect(() => readLearners(folder)).toThrow(/there is no file/);
  });
});

describe('readLearners(file), given anything,', () => {
  /** Learners, or what is wrong, each with its place; within a second or two. */
  const outcome = (content: string | Uint8Array) => {
    writeFileSync(file, content);
    const started = cpuTime();
    try {
      for (const { name, row } of readLearners(file)) {
        expect(name).toMatch(/^[^\p{Cc}\u061C\u200E\u200F\u2028-\u202E\u2066-\u2069]{1,80}$/u);
        expect(row).toBeGreaterThan(0);
      }
    } catch (error) {
      if (!(error instanceof ContentError)) throw error;
      for (const { rule, start } of error.diagnostics) {
        expect(rule).toMatch(/^learners\//);
        expect(start.line).toBeGreaterThan(0);
        expect(start.column).toBeGreaterThan(0);
      }
    }
    expect(cpuTime() - started).toBeLessThan(5000);
  };

  it('gives learners or located faults: bytes', () =>
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), outcome), { numRuns: 500 }));

  it('gives learners or located faults: rows of what matters', () => {
    const piece = fc.constantFrom(
      '"',
      '""',
      ',',
      ';',
      '\t',
      '\n',
      '\r\n',
      '\r',
      'name',
      'Ada',
      ' ',
      'é',
      'ש',
      'ع',
      '\u2028',
      '\u200F',
      '\u202E',
      '\u2067',
      '=',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => outcome(pieces.join(''))),
      { numRuns: 800 },
    );
  });

  it.each(['"', '""', '"a"b', ',', ',"', '\n', 'a"\n', '"a\n', '"a",\n', ';\t,', 'a,', 'é\n', 'name,'])(
    'ends soon with a megabyte of %j',
    (piece) => {
      const whole = piece.repeat(Math.floor(990_000 / Buffer.byteLength(piece)));
      outcome(whole);
      outcome(`name\n${whole}`);
    },
  );
});
