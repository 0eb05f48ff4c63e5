import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Mark, Part, Problem } from '../../src/problems/problem.js';
import { markCount } from '../../src/sheets/mark-count.js';
import { markSheetHtml } from '../../src/sheets/mark-sheet.js';
import { marksOf } from '../../src/sheets/problem-marks.js';
import { lookAt } from '../print/fingerprint.js';
import { problems } from './class-lessons.js';
import { classOf, STYLES } from './class-sets.js';
import { openPress, type Press } from './press.js';

describe('markCount(problem)', () => {
  const part = (codes: string, follows = 0): Part =>
    ({
      marks: codes.split(' ').map((code): Mark => ({ code, for: '' })),
      follows: Array(follows).fill({ part: 0, gives: '', answer: '' }),
    }) as unknown as Part;

  it('adds marks up by their letter, and tells how many may follow through', () =>
    expect(
      markCount({ parts: [part('M2 A1'), part('M1 A2', 3), part('B1 A1')] } as unknown as Problem),
    ).toEqual({
      M: 3,
      A: 4,
      B: 1,
      ft: 2,
    }));

  it('comes to the marks that the sheet tells', () => {
    for (const problem of problems) {
      const { M, A, B } = markCount(problem);
      expect(M + A + B).toBe(marksOf(problem));
    }
  });
});

describe('a mark sheet printed', () => {
  let press: Press;
  beforeAll(async () => {
    press = await openPress();
  });
  afterAll(() => press.close());

  it.each(Object.entries(STYLES))('on %s has twelve learners to a page', async (name, style) => {
    const { sizes, tagged, text, pages, outline } = await lookAt(
      await press.print(markSheetHtml(classOf(30), style)),
    );
    expect(new Set(sizes)).toEqual(new Set([name.startsWith('A4') ? '297.0 × 209.9' : '279.4 × 215.9']));
    expect(tagged).toBe(true);
    expect(outline).toHaveLength(3);
    const seats = text.map((page) => [...page.matchAll(/Müller-Żółć (\d+)/g)].map(([, n]) => Number(n)));
    const twelve = (from: number, to: number) =>
      Array.from({ length: to - from + 1 }, (_, n) => from + n).filter((n) => n !== 5);
    const bands = (pages - 3) / 6;
    expect(Number.isInteger(bands)).toBe(true);
    const lesson = [twelve(1, 12), twelve(13, 24), twelve(25, 30)].flatMap((some) => Array(bands).fill(some));
    expect(seats).toEqual([...lesson, ...lesson, twelve(1, 12), twelve(13, 24), twelve(25, 30)]);
    text.forEach((page, place) => {
      expect(page).toContain('Marks · Class 8FJ-1B1-4');
      expect(page).toContain(`page ${place + 1} of ${pages}`);
      expect(page).toMatch(/No\..*Seat.*Name/);
    });
  });

  it('has the variants on the page for totals', async () => {
    const { text } = await lookAt(await press.print(markSheetHtml(classOf(3), STYLES['A4, plain'])));
    expect(text.at(-1)?.match(/7KQ-2M4-X/g)).toHaveLength(3);
  });
});
