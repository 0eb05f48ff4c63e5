import { describe, expect, it } from 'vitest';
import { answerKeyHtml } from '../../src/sheets/answer-key.js';
import { handoutHtml } from '../../src/sheets/handout.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { problemSheetHtml } from '../../src/sheets/problem-sheet.js';
import { shopCardHtml } from '../../src/sheets/shop-card.js';
import { card } from './class-card.js';
import { head, lesson, problems } from './class-lessons.js';
import { normalised } from './normalised.js';

const metric: SheetStyle = { paper: 'a4', units: 'mm', print: 'plain' };
const inches: SheetStyle = { paper: 'letter', units: 'inch', print: 'large' };
const sheet = { head, variant: 'K7Q2-M', learner: 'Ada Brown', lessons: [{ lesson: lesson(), problems }] };

const DOCUMENTS = {
  handout: (style: SheetStyle) => handoutHtml({ head, lessons: [lesson()] }, style),
  problems: (style: SheetStyle) => problemSheetHtml(sheet, style),
  key: (style: SheetStyle) => answerKeyHtml(sheet, style),
  card: (style: SheetStyle) => shopCardHtml(card, style),
};

describe.each(Object.entries(DOCUMENTS))('a %s', (name, make) => {
  it.each([
    ['metric', metric],
    ['inches', inches],
  ] as const)('matches its golden, %s', async (which, style) => {
    await expect(normalised(make(style))).toMatchFileSnapshot(`golden/${name}-${which}.html`);
  });

  it('is the same every time', () => expect(make(metric)).toBe(make(metric)));

  it('has a language, a title, one style sheet beside it, and nothing else to fetch', () => {
    const html = make(metric);
    expect(html).toMatch(/^<!doctype html>\n<html lang="en-GB">/);
    expect(html).toMatch(/<title>The Larkfield timepiece: [^<]+<\/title>/);
    expect([...html.matchAll(/(?:href|src)="([^#"][^"]*)"/g)].map(([, to]) => to)).toEqual(['benchleaf.css']);
    expect(html).not.toMatch(/url\((?!"data:image\/svg)|@import/);
    for (const [, id] of html.matchAll(/\bid="([^"]*)"/g)) expect(id).toMatch(/^lesson-[\w-]+$/);
  });

  it('has headings in order, and tables whose headings say what they head', () => {
    const html = make(metric);
    const levels = [...html.matchAll(/<h(\d)/g)].map(([, level]) => Number(level));
    levels.forEach((level, place) => {
      expect(level).toBeLessThanOrEqual((levels[place - 1] ?? 0) + 1);
    });
    expect(levels[0]).toBe(1);
    for (const [th] of html.matchAll(/<th\b[^>]*>/g)) expect(th).toMatch(/scope="(col|row)"/);
    expect(html).not.toContain('aria-hidden');
  });

  it('leaves no placeholder, and nothing undefined', () => {
    expect(make(metric)).not.toMatch(/[\uE000\uE001\uFFFD]|undefined|NaN|\[object/);
  });
});

it('a problem sheet tells no answer', () => {
  const html = problemSheetHtml(sheet, metric);
  for (const { answer, slips, accepted } of problems.flatMap(({ parts }) => parts)) {
    for (const { says, gives } of slips) for (const text of [says, gives]) expect(html).not.toContain(text);
    if (accepted) expect(html).not.toContain(accepted);
    expect(html).not.toContain(answer.replace('\u202F', '\u00A0'));
  }
});
