import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerKeyHtml } from '../../src/sheets/answer-key.js';
import { copyAssets } from '../../src/sheets/assets.js';
import { handoutHtml } from '../../src/sheets/handout.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { problemSheetHtml } from '../../src/sheets/problem-sheet.js';
import { shopCardHtml } from '../../src/sheets/shop-card.js';
import { card } from './class-card.js';
import { head, lesson, problems } from './class-lessons.js';
import { type Measure, openMeasure } from './too-wide.js';

let folder: string;
let measure: Measure;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'benchleaf-widths-'));
  await copyAssets(folder);
  measure = await openMeasure();
});

afterAll(async () => {
  await measure.close();
  await rm(folder, { recursive: true });
});

async function tooWide(html: string): Promise<number[]> {
  const file = join(folder, 'page.html');
  await writeFile(file, html);
  return measure.tooWide(file);
}

const styles = (['a4', 'letter'] as const).flatMap((paper) =>
  (['plain', 'large'] as const).map((print): SheetStyle => ({ paper, print, units: 'mm' })),
);
const long = 'Wolfeschlegelsteinhausen '.repeat(6).trim();
const sheet = {
  head,
  variant: 'K7Q2-M',
  learner: long,
  lessons: [{ lesson: lesson({ title: long }), problems }],
};

describe.each(styles)('on $paper, $print print, nothing is wider than its page', (style) => {
  it.each([
    ['handout', () => handoutHtml({ head, lessons: [lesson()] }, style)],
    ['problem sheet', () => problemSheetHtml(sheet, style)],
    ['key', () => answerKeyHtml(sheet, style)],
    ['card', () => shopCardHtml(card, style)],
  ])('in a %s', async (_, html) => expect(await tooWide(html())).toEqual([]));

  it('but what is wider is found', async () => {
    const body = `| ${'Unbreakable'.repeat(30)} | b |\n|---|---|\n| 1 | 2 |`;
    expect(await tooWide(handoutHtml({ head, lessons: [lesson({ body })] }, style))).toHaveLength(1);
  });
});
