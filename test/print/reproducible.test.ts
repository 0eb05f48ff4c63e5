import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { settled } from '../../src/print/pdf.js';
import { Printer } from '../../src/print/printer.js';
import { longPage, page, workFolder } from './sample-page.js';

const date = new Date('2026-01-02T03:04:05Z');
let work: string;

beforeEach(async () => {
  work = await workFolder();
});

afterEach(() => rm(work, { recursive: true }));

/** Prints the long page several times in one browser, among others. */
async function prints(name: string): Promise<Buffer[]> {
  const printer = await Printer.open({ workFolder: work, date });
  try {
    const jobs = Array.from({ length: 4 }, (_, n) => ({
      html: longPage(),
      to: join(work, `${name}-${n}.pdf`),
    }));
    const others = jobs.map(({ to }) => ({
      html: page('<table><th>a</th><td>b</td></table>'),
      to: `${to}.other`,
    }));
    await printer.printAll(jobs.flatMap((job, n) => [job, others[n] ?? job]));
    return await Promise.all(jobs.map(({ to }) => readFile(to)));
  } finally {
    await printer.close();
  }
}

describe('printed with a date, one page gives the same bytes', () => {
  it('each time, in one browser and in another', async () => {
    const [first, ...rest] = [...(await prints('a')), ...(await prints('b'))];
    expect(rest).toHaveLength(7);
    for (const other of rest) expect(other.equals(first as Buffer)).toBe(true);
  });

  it('with both dates as given, and an index of structure ids that leads where it says', async () => {
    const text = ((await prints('c'))[0] as Buffer).toString('latin1');
    expect(text.match(/\/(CreationDate|ModDate) \([^)]*\)/g)).toEqual([
      "/CreationDate (D:20260102030405+00'00')",
      "/ModDate (D:20260102030405+00'00')",
    ]);
    const index = [...text.matchAll(/\((node\d{8})\) (\d+) 0 R/g)];
    expect(index).toHaveLength(120); // two heads in each of 60 tables
    expect(index.map(([, id]) => id)).toEqual(index.map(([, id]) => id).sort());
    for (const [, id, object] of index) {
      const start = text.indexOf(`\n${object} 0 obj\n`);
      expect(text.slice(start, text.indexOf('endobj', start))).toContain(`/ID (${id})`);
    }
  });
});

describe('settled(pdf)', () => {
  it('numbers ids as they appear, puts the index in order, and keeps the length', () => {
    const pdf = Buffer.from(
      '/ID (node00000035) /ID (node00000016) /Headers [(node00000035)]\n' +
        '/Limits [(node00000016) (node00000035)]\n/Names [(node00000016) 7 0 R (node00000035) 155 0 R]',
    );
    expect(settled(pdf).toString()).toBe(
      '/ID (node00000001) /ID (node00000002) /Headers [(node00000001)]\n' +
        '/Limits [(node00000001) (node00000002)]\n/Names [(node00000001) 155 0 R (node00000002) 7 0 R]',
    );
  });

  it('leaves dates alone when none is given', () => {
    const pdf = Buffer.from("/CreationDate (D:20261125121007+00'00')");
    expect(settled(pdf).equals(pdf)).toBe(true);
  });
});
