import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { referenceSheets } from '../../src/reference/index.js';
import { benchleaf } from '../cli/benchleaf.js';
import { kits } from '../lesson/lessons.js';
import { lookAt } from '../print/fingerprint.js';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-sheets-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Print breaks lines where it likes, sets a unit under its head, and has a minus of its own. */
const squeezed = (text: string): string => text.replaceAll(/[\s,]+/g, '').replaceAll('−', '-');

/** A page that has nothing after its running heads but what stands at the end of a sheet. */
const ALONE = /^.{0,120}Checkedagainst/;

describe.each([
  ['a4', 'plain', 'harrow-lane', 0],
  ['letter', 'large', 'mill-yard', 1],
] as const)('on %s, %s, for %s', (paper, print, kit, at) => {
  const served = referenceSheets.filter(({ needs }) => needs?.in(kits[at]) ?? true);
  const sheets = join(folder, `${paper}-${print}`, 'larkfield', 'sheets');
  beforeAll(async () => {
    const out = ['--out', join(folder, `${paper}-${print}`), '--quiet'];
    const how = ['--paper', paper, '--print', print, '--kit', `lessons/kits/${kit}.yaml`];
    expect(await benchleaf('make', '--only', 'sheets', ...how, ...out)).toEqual({
      code: 0,
      out: '',
      err: '',
    });
  });

  it('makes every sheet, and its figures beside it', () => {
    const names = served.flatMap(({ name }) => [`${name}.csv`, `${name}.pdf`]);
    expect(readdirSync(sheets).sort()).toEqual(names.sort());
  });

  it.each(served.map(({ name }) => name))('%s prints the rows of its CSV', async (name) => {
    const csv = readFileSync(join(sheets, `${name}.csv`));
    const rows: string[][] = parse(csv, { bom: true, relax_column_count: true });
    const { text } = await lookAt(join(sheets, `${name}.pdf`));
    const printed = squeezed(text.join(' '));
    const asPrinted = (row: string[]) => squeezed(row.map((cell) => cell.replace(/^'/, '')).join(' '));
    expect(rows.length).toBeGreaterThan(2);
    expect(rows.filter((row) => !printed.includes(asPrinted(row)))).toEqual([]);
    // What stands at the end is not left alone; in large print it may be as long as a page.
    if (print === 'plain') expect(squeezed(text.at(-1) ?? '')).not.toMatch(ALONE);
  });
});

describe('a sheet by its name', () => {
  it('is made by itself', async () => {
    const out = join(folder, 'one');
    const { code } = await benchleaf('make', 'sheet:simple-indexing', '--out', out, '--quiet');
    expect(code).toBe(0);
    expect(readdirSync(join(out, 'sheets', 'sheets')).sort()).toEqual([
      'simple-indexing.csv',
      'simple-indexing.pdf',
    ]);
  });

  it('is told nearly right by one who types it nearly right', async () => {
    const { code, err } = await benchleaf('make', 'sheet:simple-indexin');
    expect([code, err]).toEqual([
      2,
      'benchleaf: there is no sheet "sheet:simple-indexin". Did you mean sheet:simple-indexing?\n',
    ]);
  });

  it('is listed with what it needs', async () => {
    const { out } = await benchleaf('list', 'sheets');
    expect(out).toMatch(/^sheet:simple-indexing: Simple indexing; .*\n {4}needs a dividing head/m);
  });
});
