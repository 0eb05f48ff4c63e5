import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { make } from '../../src/pack/make.js';
import { fingerprint } from '../print/fingerprint.js';
import { AWKWARD, orderOf, writeClass } from './class-order.js';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-class-make-'));
afterAll(() => rmSync(folder, { recursive: true }));

const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}]/u;

describe('a class of thirty', () => {
  it('is printed from its list: a sheet each, the keys, the grid and the mark sheet', {
    timeout: 300_000,
  }, async () => {
    const list = join(folder, 'class.csv');
    writeClass(list, AWKWARD);
    const order = orderOf(['07-depth-and-cutter-choice'], ['problems', 'key', 'grid', 'marks'], {
      learners: list,
      paper: 'letter',
    });
    const out = join(folder, 'evening');
    const { documents } = await make(order, out, { quiet: true });
    expect(documents).toHaveLength(30 * 3 + 3);
    for (const { file, bytes } of documents) {
      expect(existsSync(file)).toBe(true);
      expect(bytes).toBeGreaterThan(100);
    }
    expect(readdirSync(out).sort()).toEqual([
      'class-grid.pdf',
      'keys',
      'mark-sheet.csv',
      'mark-sheet.pdf',
      'problems',
    ]);
    expect(readdirSync(join(out, 'problems'))).toHaveLength(30);

    const spaceless = (text: string) => text.normalize('NFC').replace(/\s/g, '');
    const grid = spaceless((await fingerprint(join(out, 'class-grid.pdf'))).text.join(''));
    const marks = spaceless((await fingerprint(join(out, 'mark-sheet.pdf'))).text.join(''));
    // What runs from right to left comes out of a PDF in the order it is drawn.
    for (const name of AWKWARD.filter((one) => !RIGHT_TO_LEFT.test(one))) {
      expect(grid).toContain(spaceless(name));
      expect(marks).toContain(spaceless(name));
    }
    // Half the sheets have their code looked at, on every page.
    for (const { file, variant = '', learner = '' } of documents.filter(
      ({ kind }, at) => kind === 'problems' && at % 2 === 0,
    )) {
      const { text } = await fingerprint(file);
      for (const page of text) expect(page).toContain(`Variant ${variant}`);
      if (!RIGHT_TO_LEFT.test(learner)) expect(spaceless(text[0] ?? '')).toContain(spaceless(learner));
    }
  });
});
