import { cautions } from '../lesson/cautions.js';
import type { ReferenceSheet } from '../reference/sheet.js';
import { demandGlyphs } from './glyphs.js';
import type { SheetHead, SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { render } from './templates.js';
import { wallSettingOf } from './wall-setting.js';
import { setTables } from './wall-table.js';
import { unbroken } from './wall-widths.js';

/** A sheet for the wall, and what it says of itself. */
export interface WallSheet {
  readonly head: SheetHead;
  readonly title: string;
  readonly sheet: ReferenceSheet;
  readonly sources: readonly string[];
  /** Of its making, as it is to be read. */
  readonly date: string;
}

/** Sources of no more letters than this stand beside the cautions. */
const FEW = 300;
/** What the caution box says of every machine is as long as this. */
const STRIP = 'x'.repeat(208);
const PAGES = 'wall';

/**
 * Tables for the wall of the workshop: heads on every page, figures under one another by their points, and at the
 * end what they were held against.
 *
 * @throws {InputError} for a character that cannot be printed
 */
export function referenceSheetHtml(wall: WallSheet, style: SheetStyle): string {
  demandGlyphs(wall);
  const { head, title, sheet, sources, date } = wall;
  const upright = setOn(sheet, sources, style, false);
  const turned = setOn(sheet, sources, style, true);
  // The paper lies on its side where that is needed, or saves a page.
  const onSide = upright.wide || (!turned.wide && turned.pages < upright.pages);
  const set = onSide ? turned : upright;
  return pageHtml({
    kind: 'reference',
    title: `${title}: ${head.kit}`,
    style,
    head: { ...head, course: head.club || head.course },
    foot: `${head.kit} · made ${date}`,
    parts: [{ page: PAGES, head: title }],
    turned: onSide,
    body: render('reference-sheet', {
      page: PAGES,
      title,
      ...set,
      cautions: sheet.cautions.map((name) => cautions[name]),
    }),
  });
}

/** How a sheet comes out on paper upright or on its side. */
function setOn(sheet: ReferenceSheet, sources: readonly string[], style: SheetStyle, turned: boolean) {
  const round = {
    machine: sheet.machine ?? '',
    conventions: sheet.conventions.map(unbroken),
    sources: sources.join('; '),
    cautions: [...sheet.cautions.map((name) => cautions[name]), STRIP],
    beside: sources.join('; ').length <= FEW && (style.print === 'plain' || turned),
  };
  return {
    ...round,
    ...setTables(sheet.tables, { print: style.print, ...wallSettingOf(style, turned) }, round),
  };
}
