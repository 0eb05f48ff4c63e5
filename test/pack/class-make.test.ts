import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { make } from '../../src/pack/make.js';
import { fingerprint } from '../print/fingerprint.js';
import { AWKWARD, orderOf, writeClass } from './class-order.js';
import { lettersOf, rightToLeftTexts, runsRightToLeft } from './right-to-left.js';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-class-make-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The faces that sheets come with: no other may be asked for, nor for what cannot be seen. */
const OURS = /^(SourceSerif4-\S+|SourceSans3\S*|KaTeX_\S+|NotoSans(Symbols|Math|Arabic|HebrewThin)-Regular)$/;

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
      'packing-list-1-of-1.json',
      'problems',
    ]);
    expect(readdirSync(join(out, 'problems'))).toHaveLength(30);

    const spaceless = (text: string) => text.normalize('NFC').replace(/\s/g, '');
    const turned = AWKWARD.filter(runsRightToLeft);
    expect(turned).toHaveLength(4);
    for (const whole of ['class-grid.pdf', 'mark-sheet.pdf']) {
      const text = spaceless((await fingerprint(join(out, whole))).text.join(''));
      for (const name of AWKWARD.filter((one) => !runsRightToLeft(one)))
        expect(text).toContain(spaceless(name));
      const lines = rightToLeftTexts(join(out, whole)).flat();
      for (const name of turned) expect(lines).toContain(lettersOf(name));
    }
    for (const { kind, file, variant = '', learner = '' } of documents) {
      if (learner === '' || !file.endsWith('.pdf')) continue;
      const { text, fonts } = await fingerprint(file);
      for (const font of fonts) expect(font).toMatch(OURS);
      for (const page of text) expect(page).toContain(`Variant ${variant}`);
      if (!runsRightToLeft(learner)) {
        expect(spaceless(text[0] ?? '')).toContain(spaceless(learner));
        continue;
      }
      // At the top of the first page, and at the foot of every one.
      const pages = rightToLeftTexts(file);
      const found = pages.map((lines) => lines.filter((line) => line === lettersOf(learner)).length);
      expect({ kind, found }).toEqual({ kind, found: pages.map((_, at) => (at === 0 ? 2 : 1)) });
    }
  });
});
