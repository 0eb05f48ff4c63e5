import { mkdtemp, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { copyAssets } from '../../src/sheets/assets.js';
import { cardSheetHtml } from '../../src/sheets/card-sheet.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { type DrawnPlace, drawnPlaces } from '../print/drawn-places.js';
import { fingerprint, lookAt } from '../print/fingerprint.js';
import { families, type WorkedFamily } from '../reference/card-jobs.js';
import { type CardMeasure, openCardMeasure } from './card-measure.js';
import { textSizes } from './heard.js';
import { openPress, type Press } from './press.js';

const HEAD = { course: 'The Larkfield timepiece', club: 'Harrow Lane Model Engineers', kit: '' };

const htmlOf = (
  { kind, kit, cards, sources, units }: WorkedFamily,
  style: Omit<SheetStyle, 'units'>,
): string =>
  cardSheetHtml(
    {
      head: { ...HEAD, kit: kit.kit },
      title: kind.title,
      cards,
      conventions: kind.conventions,
      sources,
      date: '26 November 2026',
    },
    { ...style, units },
  );

const familyOf = (name: string, who = 'the class wheel'): WorkedFamily =>
  families.find((one) => one.kind.name === name && one.who === who) as WorkedFamily;

/** Where the paper is to be cut, mm from its top left, as the sizes of the cards have it; and cards to a sheet. */
const SHEETS = {
  'A4, plain': {
    style: { paper: 'a4', print: 'plain' },
    size: [297, 210],
    across: [148.5],
    down: [105],
    card: '148.5 mm by 105 mm (A6)',
    each: 4,
  },
  'A4, large': {
    style: { paper: 'a4', print: 'large' },
    size: [210, 297],
    across: [],
    down: [148.5],
    card: '210 mm by 148.5 mm (A5)',
    each: 2,
  },
  // Two A6 cards one above the other, 148 by 105, and one turned, 105 by 148.
  'Letter, plain': {
    style: { paper: 'letter', print: 'plain' },
    size: [279.4, 215.9],
    across: [13.2, 13.2 + 148, 13.2 + 148 + 105],
    down: [105, 148, 210],
    card: '148 mm by 105 mm (A6)',
    each: 3,
  },
  // One A5 card, 210 by 148.
  'Letter, large': {
    style: { paper: 'letter', print: 'large' },
    size: [215.9, 279.4],
    across: [210],
    down: [148],
    card: '210 mm by 148 mm (A5)',
    each: 1,
  },
} as const;

let press: Press;
beforeAll(async () => {
  press = await openPress();
});
afterAll(() => press.close());

/** Each place once, to a twentieth of a millimetre. */
const distinct = (places: readonly number[]): number[] =>
  [...places].sort((a, b) => a - b).filter((place, at, all) => at === 0 || place - (all[at - 1] ?? 0) > 0.05);

describe.each(Object.entries(SHEETS))('cards on %s', (_, { style, size, across, down, card, each }) => {
  let pdf = '';
  let marks: DrawnPlace[] = [];
  const family = familyOf('guards');
  beforeAll(async () => {
    pdf = await press.print(htmlOf(family, style));
    // No other stroke is a straight line along an edge, 2 to 10 mm long, outside every card.
    const [first = []] = await drawnPlaces(pdf);
    marks = first.filter(
      ({ width, height }) => Math.min(width, height) < 0.01 && Math.max(width, height) <= 10.01,
    );
  });

  it('has marks to cut by where the sizes of the cards have them, to 0.1 mm', async () => {
    // The page is cut to a whole pixel: the top is where the page ends.
    const [, tall = 0] = (await lookAt(pdf)).sizes[0]?.split(' × ').map(Number) ?? [];
    const upright = distinct(marks.filter(({ height }) => height > 1).map(({ x }) => x));
    const level = distinct(marks.filter(({ width }) => width > 1).map(({ y }) => tall - y));
    const missing = (found: readonly number[], wanted: readonly number[]) =>
      wanted.filter((one) => !found.some((place) => Math.abs(place - one) <= 0.1));
    expect(missing(upright, across)).toEqual([]);
    expect(missing(level, down)).toEqual([]);
    // No printer reaches the last 5 mm of the paper: each mark is seen further in, and none lies along an edge there.
    const inside = ([wide, tall]: readonly [number, number], { x, y, width, height }: DrawnPlace) =>
      x + width / 2 > 5 && x - width / 2 < wide - 5 && y + height / 2 > 5 && y - height / 2 < tall - 5;
    expect(marks.filter((mark) => !inside(size, mark))).toEqual([]);
  });

  it('has marks of 0.35 mm in black', () => {
    const svg = /<svg class="marks"[^>]*>/.exec(htmlOf(family, style))?.[0] ?? '';
    expect(svg).toContain('stroke="#000" stroke-width="0.35"');
  });

  it('is a sheet for so many cards, and one about them', async () => {
    const { pages, sizes, tagged, language, title, outline, fonts, text } = await fingerprint(pdf);
    const { cards, kit, kind } = family;
    expect(pages).toBe(Math.ceil(cards.length / each) + 1);
    for (const one of sizes) {
      const [wide = 0, tall = 0] = one.split(' × ').map(Number);
      expect(Math.abs(wide - size[0])).toBeLessThanOrEqual(0.3);
      expect(Math.abs(tall - size[1])).toBeLessThanOrEqual(0.3);
    }
    expect({ tagged, language, title }).toEqual({
      tagged: true,
      language: 'en-GB',
      title: `${kind.title}: ${kit.kit}`,
    });
    expect(outline).toEqual([...cards.map((card) => card.title), 'About these cards']);
    expect(fonts.filter((font) => font.includes('not embedded'))).toEqual([]);
    const all = text.join('\n');
    for (const { title: one } of cards) expect(all).toContain(one);
    expect(text.at(-1)?.replaceAll(/\s+/g, ' ')).toContain(card);
  });

  it('has big numbers of 18 pt and more, and no letter on a card too small to be read', async () => {
    const large = style.print === 'large';
    const sizes = await textSizes(await press.print(htmlOf(familyOf('diagnosis'), style)));
    expect(Math.max(...sizes)).toBeGreaterThanOrEqual(large ? 56 : 40);
    const words = large ? 18 : 12.75;
    expect(sizes.some((one) => Math.abs(one - words) < 0.1)).toBe(true);
    // The foot, the sources on the last sheet, and an index in a picture.
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(large ? 12 : 8.5);
  });
});

describe('few cards', () => {
  it('fill their sheet with copies', async () => {
    const text = (
      await lookAt(await press.print(htmlOf(familyOf('sector-arms'), { paper: 'a4', print: 'plain' })))
    ).text;
    expect(text[0]?.match(/Holes inside the arms/g)).toHaveLength(4);
    expect(text).toHaveLength(2);
  });

  it('name a job as it is, whatever is in it', () => {
    const tally = familyOf('tally');
    const [card] = tally.cards;
    if (!card) throw new Error('no card');
    const html = htmlOf(
      { ...tally, cards: [{ ...card, about: '<b>A & "B"</b>' }] },
      { paper: 'a4', print: 'plain' },
    );
    expect(html).toContain('&lt;b&gt;A &amp; &quot;B&quot;&lt;/b&gt;');
    expect(html).not.toContain('<b>A');
  });
});

describe('every card', () => {
  let work = '';
  let measure: CardMeasure;
  beforeAll(async () => {
    work = await realpath(await mkdtemp(join(tmpdir(), 'benchleaf-cards-')));
    await copyAssets(work);
    measure = await openCardMeasure();
  });
  afterAll(async () => {
    await measure.close();
    await rm(work, { recursive: true });
  });

  it.each(
    (['plain', 'large'] as const).flatMap((print) =>
      families.map(
        (one) =>
          [`${one.kind.name}, ${one.kit.kit}, ${one.units}, ${one.who}, ${print}`, one, print] as const,
      ),
    ),
  )('%s: holds all that is on it', async (_, family, print) => {
    if (family.cards.length === 0) return;
    const file = join(work, 'cards.html');
    await writeFile(file, htmlOf(family, { paper: 'a4', print }));
    expect(await measure.overfull(file)).toEqual([]);
  });
});
