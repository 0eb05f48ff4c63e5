import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { handoutHtml } from '../../src/sheets/handout.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { shopCardHtml } from '../../src/sheets/shop-card.js';
import { type DrawnBox, drawnBoxes } from '../print/drawn-boxes.js';
import { lookAt } from '../print/fingerprint.js';
import { card } from './class-card.js';
import { head, lesson } from './class-lessons.js';
import { textSizes } from './heard.js';
import { openPress, type Press } from './press.js';

const styles = {
  'A4, plain': { paper: 'a4', units: 'mm', print: 'plain' },
  'A4, large': { paper: 'a4', units: 'mm', print: 'large' },
  'Letter, plain': { paper: 'letter', units: 'inch', print: 'plain' },
  'Letter, large': { paper: 'letter', units: 'inch', print: 'large' },
} as const satisfies Record<string, SheetStyle>;

let press: Press;

beforeAll(async () => {
  press = await openPress();
});

afterAll(() => press.close());

const near = (length: number) => (measured: number) => Math.abs(measured - length) <= 0.05;

async function boxesOf(html: string): Promise<DrawnBox[]> {
  const pdf = await press.print(html);
  const { pages } = await lookAt(pdf);
  const each = await Promise.all(Array.from({ length: pages }, (_, place) => drawnBoxes(pdf, place + 1)));
  return each.flat();
}

describe.each(Object.entries(styles))('a printed handout, %s', (_, style) => {
  const handout = (changes: Parameters<typeof lesson>[0]) =>
    handoutHtml({ head, lessons: [lesson(changes)] }, style);

  it('has 100 mm for 100 mm in both directions', async () => {
    const boxes = await boxesOf(handout({ body: '{{figure "check-bar" length=100 units="mm"}}' }));
    expect(boxes.filter(({ width, height }) => near(100)(width) && height < 1)).not.toEqual([]);
    expect(boxes.filter(({ width, height }) => near(100)(height) && width < 1)).not.toEqual([]);
  });

  it('has the blank as large as the blank', async () => {
    const boxes = await boxesOf(handout({}));
    expect(boxes.filter(({ width, height }) => near(50.208)(width) && near(50.208)(height))).not.toEqual([]);
  });

  it('is refused rather than shrunk or cut when something is too wide for it', async () => {
    const word = 'Unbreakable'.repeat(30);
    const body = `| ${word} | b |\n|---|---|\n| 1 | ${word} |\n\n{{figure "check-bar" length=100 units="mm"}}`;
    await expect(boxesOf(handout({ body }))).rejects.toThrow(/wider than the page: "Unbreakable/);
  });
});

describe.each(Object.entries(styles))('a printed card, %s', (_, style) => {
  it('has digits 12 mm tall and more, and no letter under 12 pt but an index', async () => {
    const sizes = await textSizes(await press.print(shopCardHtml(card, style)));
    // The figure 1 of Source Sans 3, semibold, is 0.63 of the size it is set in.
    expect((Math.max(...sizes) * 0.63 * 25.4) / 72).toBeGreaterThanOrEqual(12);
    expect(sizes.filter((size) => size < 12).every((size) => size >= 0.69 * 12)).toBe(true);
    expect(sizes.filter((size) => size < 12).length).toBeLessThanOrEqual(1);
  });
});
