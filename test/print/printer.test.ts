import { copyFileSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MachineError } from '../../src/diagnostics/errors.js';
import { findBrowser } from '../../src/print/browser.js';
import { Printer } from '../../src/print/printer.js';
import { fingerprint, lineEnds } from './fingerprint.js';

let work: string;
let printer: Printer;

beforeAll(async () => {
  work = mkdtempSync(join(tmpdir(), 'benchleaf-test-'));
  copyFileSync(
    'node_modules/@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff2',
    join(work, 'text.woff2'),
  );
  printer = await Printer.open(work);
});
afterAll(async () => {
  await printer?.close();
  rmSync(work, { recursive: true, force: true });
});

const document = (style: string, body: string) =>
  `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Sheet</title><style>
  @font-face { font-family: T; src: url(../text.woff2); } body { font-family: T; } ${style}</style></head><body>${body}</body></html>`;

describe('Printer', () => {
  it.each([
    ['A4', 595, 842],
    ['letter', 612, 792],
  ])('prints %s from CSS, tagged, with an outline and our font', async (size, width, height) => {
    const to = join(work, `${size}.pdf`);
    await printer.print({
      html: document(`@page { size: ${size} }`, '<h1>Depth of cut</h1><p>Two passes.</p>'),
      to,
    });
    const print = await fingerprint(to);
    expect(print).toMatchObject({ pages: 1, tagged: true, outline: ['Depth of cut'] });
    expect(print.text[0]).toContain('Two passes.');
    expect(print.fonts.join()).toMatch(/SourceSerif/);
    expect(Math.abs(print.width - width)).toBeLessThan(1);
    expect(Math.abs(print.height - height)).toBeLessThan(1);
  });

  it('prints 100 mm as 100 mm within 0.05 mm in both directions', async () => {
    const to = join(work, 'scale.pdf');
    const svg =
      '<svg width="120mm" height="120mm" viewBox="0 0 120 120"><path d="M10 10 L110 10 L110 110" fill="none" stroke="black" stroke-width="0.5"/></svg>';
    await printer.print({ html: document('@page { size: A4 }', svg), to });
    const { across, down } = await lineEnds(to);
    expect(Math.abs(across - 100)).toBeLessThan(0.05);
    expect(Math.abs(down - 100)).toBeLessThan(0.05);
  });

  it.each([
    ['http://127.0.0.1:9/x.css', 'an address on a network'],
    ['file:///etc/hostname', 'a file outside the work folder'],
    ['../nosuch.css', 'a file that is not there'],
  ])('will not print a page that asks for %s (%s)', async (href) => {
    const to = join(work, 'never.pdf');
    const html = document('', `<link rel="stylesheet" href="${href}"><p>Text</p>`);
    await expect(printer.print({ html, to })).rejects.toThrow(/was not fetched/);
    expect(existsSync(to)).toBe(false);
  });

  it('leaves nothing behind when the PDF cannot be written', async () => {
    await expect(
      printer.print({ html: document('', 'x'), to: join(work, 'nosuch', 'a.pdf') }),
    ).rejects.toThrow(MachineError);
    expect(readdirSync(work).filter((name) => /document-|part/.test(name))).toEqual([]);
  });
});

describe('findBrowser', () => {
  it('takes BENCHLEAF_BROWSER first, and says so when it is not there', async () => {
    expect(await findBrowser(process.execPath)).toEqual({
      path: process.execPath,
      from: 'BENCHLEAF_BROWSER',
    });
    await expect(findBrowser('/nosuch')).rejects.toThrow(MachineError);
  });

  it('takes a browser of the machine before the bundled one', async () => {
    expect(await findBrowser('', [process.execPath])).toEqual({
      path: process.execPath,
      from: 'the machine',
    });
    const bundled = await findBrowser('', []);
    expect(bundled.from).toBe('@sparticuz/chromium');
    expect(bundled.path).not.toBe(join(tmpdir(), 'chromium'));
  });
});
