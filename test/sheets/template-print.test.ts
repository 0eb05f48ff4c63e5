import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawingOf } from '../../src/figures/index.js';
import { templates } from '../../src/reference/templates/index.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { layOut, ordersFor } from '../../src/sheets/template-layout.js';
import { type TemplateSheet, templateSheetHtml } from '../../src/sheets/template-sheet.js';
import { registerMarks, tilingOf } from '../../src/sheets/template-tiles.js';
import { kits } from '../lesson/lessons.js';
import { type DrawnPlace, drawnPlaces } from '../print/drawn-places.js';
import { type Fingerprint, fingerprint } from '../print/fingerprint.js';
import { classWheel, large, others } from '../reference/template-jobs.js';
import { openPress, type Press } from './press.js';
import { sheetOf, styleName } from './template-sheets.js';

const [kit] = kits;
const STYLES = [
  { paper: 'a4', print: 'plain', units: 'mm' },
  { paper: 'a4', print: 'large', units: 'mm' },
  { paper: 'letter', print: 'plain', units: 'inch' },
  { paper: 'letter', print: 'large', units: 'inch' },
] as const satisfies readonly SheetStyle[];
const PAPERS = { a4: '209.9 × 297.0', letter: '215.9 × 279.4' } as const;
const TURNED = { a4: '297.0 × 209.9', letter: '279.4 × 215.9' } as const;

let press: Press;

beforeAll(async () => {
  press = await openPress();
});

afterAll(() => press.close());

interface Printed {
  readonly print: Fingerprint;
  readonly pages: readonly (readonly DrawnPlace[])[];
}

async function printed(sheet: TemplateSheet, style: SheetStyle): Promise<Printed> {
  const file = await press.print(templateSheetHtml(sheet, style));
  return { print: await fingerprint(file), pages: await drawnPlaces(file) };
}

/** Within 0.05 mm in 100. */
const near = (length: number, measured: number): boolean =>
  Math.abs(measured - length) <= Math.max(0.01, (0.05 / 100) * length);

const has = (places: readonly DrawnPlace[], width: number, height: number): boolean =>
  places.some((one) => near(width, one.width) && near(height, one.height));

/** Pages with a drawing on them, by what stands beside its bars. */
const drawn = ({ print: { text }, pages }: Printed) =>
  pages.flatMap((places, at) => {
    const words = text[at] ?? '';
    return words.includes('measured across') ? [{ places, words }] : [];
  });

describe.each(STYLES.map((style) => [styleName(style), style] as const))('printed on %s', (_, style) => {
  const sheet = (name: string, correctedFor?: TemplateSheet['correctedFor']) =>
    sheetOf(name, { units: style.units, kit, jobs: [classWheel, ...others] }, correctedFor);

  it.each(templates.map(({ name }) => name))(
    '%s is tagged, on its paper, and has on every page its bars, across and down, its size and its heading',
    async (name) => {
      const one = sheet(name);
      const made = await printed(one, style);
      const pages = drawn(made);
      const { boards, turned } = layOut(one, style);
      const { tagged, language, fonts, sizes, title, outline } = made.print;
      expect({ tagged, language, title }).toEqual({
        tagged: true,
        language: 'en-GB',
        title: `${one.title}: ${kit.kit}`,
      });
      expect(fonts.filter((font) => !/^(SourceSans3|KaTeX_|NotoSans)/.test(font))).toEqual([]);
      expect(new Set(sizes)).toEqual(new Set([(turned ? TURNED : PAPERS)[style.paper]]));
      expect(outline[0]).toBe(one.title);
      expect(pages).toHaveLength(boards.flat().length);
      const bar = one.bar.length;
      for (const { places } of pages)
        expect([has(places, bar, 0), has(places, 0, bar)]).toEqual([true, true]);
      const parts = one.template.pieces.flatMap(({ part }, at) => (boards[at] ?? []).map(() => part));
      for (const [at, part] of parts.entries())
        expect(pages[at]?.words.replaceAll(/\s+/g, ' ')).toContain(part);
      for (const { part, over } of one.template.pieces) {
        const own = pages.filter((_, at) => parts[at] === part);
        if (own.length === 0 || over.words.includes('scale') || over.words.includes('depth')) continue;
        expect(own.map(({ places }) => has(places, over.length, over.length))).toEqual(own.map(() => true));
      }
    },
  );

  it('a cutter’s form is twenty times as wide as the cutter', async () => {
    const pages = drawn(await printed(sheet('cutter-form'), style));
    // The class wheel’s space at the rim, by leaf count: 2.530 mm.
    expect(pages[0]?.places.some(({ width }) => near(20 * 2.53, width))).toBe(true);
  });

  it('a copy for one printer is stretched so much each way, bars and all, and says so', async () => {
    const printer = { x: 0.985, y: 1.012 };
    const one = sheet('crossing', printer);
    const [page] = drawn(await printed(one, style));
    const tips = 50.208;
    expect(has(page?.places ?? [], tips / printer.x, tips / printer.y)).toBe(true);
    expect(has(page?.places ?? [], one.bar.length / printer.x, 0)).toBe(true);
    expect(has(page?.places ?? [], 0, one.bar.length / printer.y)).toBe(true);
    expect(has(page?.places ?? [], tips, tips)).toBe(false);
    const words = page?.words.replaceAll(/\s+/g, ' ');
    expect(words).toContain('for one printer only');
    expect(words).toContain('Stretched for one printer, which makes 0.985 of 1 across and 1.012 of 1 down');
  });

  it('a wheel larger than the paper meets across every seam', async () => {
    const one = sheetOf('crossing', { units: style.units, kit, jobs: [large] });
    const { turned, boards } = layOut(one, style);
    const [, order] = ordersFor(one, style, turned);
    if (!order) throw new Error('nothing to glue on');
    const { figure, given } = order.piece.drawings[0];
    const drawing = drawingOf(
      figure,
      { ...given },
      {
        labelSize: order.setting.labelSize,
        units: style.units,
        maxWidth: Number.POSITIVE_INFINITY,
      },
    );
    const pages = drawn(await printed(one, style));
    expect(pages.length).toBe(boards.flat().length);
    expect(pages.length).toBeGreaterThanOrEqual(4);
    const tips = 2.5 * (120 + 2.76);
    const marks = pages.map(({ places }) => {
      const wheel = places.find((place) => near(tips, place.width) && near(tips, place.height));
      expect(wheel).toBeDefined();
      return places
        .filter(({ width, height }) => near(5, width) && near(5, height))
        .map(({ x, y }) => ({ x: x - (wheel?.x ?? 0), y: (wheel?.y ?? 0) - y }));
    });
    // Each mark is where the whole drawing has it, and each page shares two with another.
    const across = Number(boards.flat().at(-1)?.tile?.slice(1).split(' ')[0]);
    const { content } = drawing;
    const rows = pages.length / across;
    const tiling = tilingOf(content.box, {
      width: (content.box.right - content.box.left - 16) / across + 16.001,
      height: (content.box.bottom - content.box.top - 16) / rows + 16.001,
    });
    const all = registerMarks(tiling);
    expect(tiling.tiles).toHaveLength(pages.length);
    const named = marks.map((own) =>
      own.map((mark) => all.findIndex(({ x, y }) => Math.hypot(x - mark.x, y - mark.y) <= 0.05)),
    );
    for (const own of named) {
      expect(own).not.toContain(-1);
      expect(
        named.filter((other) => other !== own && other.filter((at) => own.includes(at)).length >= 2).length,
      ).toBeGreaterThanOrEqual(1);
    }
  });
});
