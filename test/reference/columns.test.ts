import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { copyAssets } from '../../src/sheets/assets.js';
import { referenceSheetHtml } from '../../src/sheets/reference-sheet.js';
import { type Measured, openMeasured } from '../sheets/measured.js';
import { nameOf, worked } from './sheets.js';

/**
 * By how much each table is wider than the column it runs in, CSS pixels. A table that is would lie over the next one,
 * without making the page any wider.
 */
const WIDER = `[...document.querySelectorAll('.run')].map((run) => {
  const columns = run.closest('.side') ?? run;
  const { columnCount, columnGap } = getComputedStyle(columns);
  const count = Number(columnCount) || 1;
  const room = (columns.clientWidth - (count - 1) * (parseFloat(columnGap) || 0)) / count;
  return Math.max(...[...run.querySelector('table').getClientRects()].map(({ width }) => width)) - room;
})`;

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-columns-'));
let measured: Measured;
beforeAll(async () => {
  await copyAssets(folder);
  measured = await openMeasured();
});
afterAll(async () => {
  await measured?.close();
  rmSync(folder, { recursive: true, force: true });
});

const own = worked.filter(({ kit, units }) => kit.units === units);

it.each(own.map((one) => [nameOf(one), one] as const))(
  '%s: no table is wider than its column',
  async (_, one) => {
    const { kind, kit, units, sheet, sources } = one;
    const head = { course: 'A course', club: 'A club', kit: kit.kit };
    for (const style of [
      { paper: 'a4', print: 'plain', units },
      { paper: 'letter', print: 'large', units },
    ] as const) {
      const file = join(folder, 'sheet.html');
      writeFileSync(
        file,
        referenceSheetHtml({ head, title: kind.title, sheet, sources, date: 'today' }, style),
      );
      const wider = (await measured.ask(file, WIDER)) as number[];
      expect(wider.length).toBe(wider.filter((pixels) => pixels < 1).length);
      expect(wider.length).toBeGreaterThan(0);
    }
  },
);
