import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { printDiagnostics } from '../../src/diagnostics/print.js';
import { readLearners } from '../../src/pack/learners.js';
import { inSeats } from '../../src/pack/seats.js';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-class-list-'));
const file = join(folder, 'class.csv');
afterAll(() => rmSync(folder, { recursive: true }));

function read(content: string | Uint8Array) {
  writeFileSync(file, content);
  return readLearners(file).map(({ row: _, ...learner }) => learner);
}

function faultsOf(content: string | Uint8Array): string {
  try {
    read(content);
    return '';
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    return printDiagnostics(error.diagnostics, error.sources).replaceAll(`${folder}/`, '');
  }
}

describe('a list of a class', () => {
  const ada = { name: 'Ada Brown', seat: '12', print: 'large', units: 'inch' };
  it.each([
    ['in the order of the words', 'name,seat,print,units\nAda Brown,12,large,inch\n'],
    ['in another order', 'units,print,seat,name\ninch,large,12,Ada Brown\n'],
    [
      'with columns of its own between',
      'year,units,fee,name,seat,note,print\n1,inch,£5,Ada Brown,12,,large\n',
    ],
    ['by other words', 'Learner;Desk;Print size;Measure\nAda Brown;12;Large print;Imperial\n'],
    [
      'by other words again',
      'FULL NAMES\tSeat_Number\tText size\tUnits of length\nAda Brown\t12\t18 pt\tinches\n',
    ],
    ['with blank rows', '\n,,,\nname,seat,print,units\n\n,,,\nAda Brown,12,LARGE,In\n,,,\n\n'],
  ])('tells seat, print and units %s', (_, content) => expect(read(content)).toEqual([ada]));

  it('leaves to the class what a learner has not', () =>
    expect(read('name,seat,print,units\nAda,,,\nBen,3,plain,metric\n')).toEqual([
      { name: 'Ada' },
      { name: 'Ben', seat: '3', print: 'plain', units: 'mm' },
    ]));

  it.each<[string, string | Uint8Array, string]>([
    [
      'a size of print',
      'name,print\nAda,large\nBen,huge\n',
      'class.csv:3:5: error[learners/value] "huge" is no size of print',
    ],
    [
      'units',
      'units,name\nfurlong,Ada\n',
      'class.csv:2:1: error[learners/value] "furlong" is no system of units',
    ],
    [
      'a long seat',
      'name,seat\nAda,the one beside the door\n',
      'class.csv:2:5: error[learners/seat] the seat has 23',
    ],
    [
      'a seat that cannot be printed',
      'name,seat\nAda,李\n',
      'class.csv:2:5: error[learners/seat] no typeface',
    ],
    [
      'a seat without anybody',
      'seat,name\n1,Ada\n2,\n',
      'class.csv:3:3: error[learners/name] the name is missing',
    ],
    [
      'a list without names',
      'seat,print\n1,large\n',
      'class.csv:1:1: error[learners/column] no column is called name',
    ],
    [
      'a list of seats alone',
      'seat\n1\n2\n',
      'class.csv:1:1: error[learners/column] no column is called name',
    ],
    [
      'large print under a heading that is misspelt',
      'name,pirnt\nAda,\nBen,large\n',
      'class.csv:1:6: error[learners/column] is the column "pirnt" what they have for print?',
    ],
    [
      'units under a heading of their own',
      'name,rule\nAda,inch\n',
      'class.csv:1:6: error[learners/column] is the column "rule" what they have for units?',
    ],
    [
      'a Windows encoding',
      Buffer.from('name,seat\nZo\xEB,1\n', 'latin1'),
      'class.csv:2:3: error[learners/encoding]',
    ],
  ])('points at %s', (_, content, message) => expect(faultsOf(content)).toContain(message));

  it('tells what may stand there, and every fault at once', () => {
    const printed = faultsOf('name,print,units\nAda,huge,feet\n,large,mm\nCy,tiny,\n');
    expect(printed).toContain('Write plain or large, or leave it empty');
    expect(printed.match(/^class.csv:\d+:\d+/gm)).toEqual(
      ['2:5', '2:10', '3:1', '4:4'].map((at) => `class.csv:${at}`),
    );
  });
});

describe('inSeats(learners)', () => {
  const seated = (...seats: (string | undefined)[]) =>
    inSeats(seats.map((seat, row) => ({ name: 'x', row, ...(seat === undefined ? {} : { seat }) }))).map(
      ({ seat, row }) => seat ?? `row ${row}`,
    );

  it('counts as people do', () => expect(seated('10', '9', '1', '2')).toEqual(['1', '2', '9', '10']));
  it('goes along rows', () => expect(seated('B1', 'a10', 'A9')).toEqual(['A9', 'a10', 'B1']));
  it('puts those without a seat last, as they are listed', () =>
    expect(seated(undefined, '2', undefined, '1')).toEqual(['1', '2', 'row 0', 'row 2']));
  it('keeps the list’s order where nobody has a seat', () =>
    expect(seated(undefined, undefined)).toEqual(['row 0', 'row 1']));
});
