import { bands } from './bands.js';
import type { ClassLine, ClassSet } from './class-model.js';
import { type ClassSetting, classSettingOf } from './class-setting.js';
import { type MarkRow, type WhoColumns, whoColumns, whoOf } from './class-who.js';
import { demandGlyphs } from './glyphs.js';
import { type MarkGroup, markGroups, possibleIn } from './mark-columns.js';
import { totalsView } from './mark-totals.js';
import type { SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { partOf } from './part.js';
import { render } from './templates.js';

/** Learners to a page. */
const ROWS = 12;
/** Width of the box for a total, in boxes; and how much wider than need be boxes may stand. */
const TOTAL = 2;
const WIDER = 1.8;
const TOTALS = 'totals';

/**
 * Boxes for the marks of a class, lesson by lesson, twelve learners to a page, and a page to add them up on. The last
 * page has lines to spare for who comes later.
 *
 * @throws {InputError} for a character that cannot be printed
 */
export function markSheetHtml(set: ClassSet, style: SheetStyle): string {
  const { head, variant, lessons } = set;
  const named = set.lines.filter(({ learner }) => learner !== '');
  demandGlyphs([head, named.map(({ seat, learner }) => [seat, learner])]);
  const setting = classSettingOf(style);
  const who = whoColumns(named, setting);
  const pages = chunks(named);
  const asked = lessons
    .map((lesson, at) => ({ lesson, groups: markGroups(set.lines, at, setting) }))
    .filter(({ groups }) => groups.length > 0);
  const sheets = asked.map(({ lesson, groups }) => {
    const { page } = partOf(lesson);
    const { number, title } = lesson;
    const possible = possibleIn(groups);
    const tables = pages.flatMap((rows) => tablesOf(groups, rows, who, setting, possible));
    return render('mark-sheet', { page, number, title, possible, who, tables });
  });
  const totals = asked.map(({ lesson, groups }, at) => ({
    number: String(lesson.number ?? at + 1),
    possible: possibleIn(groups),
  }));
  return pageHtml({
    kind: 'class',
    title: `${head.course}: mark sheet, class ${variant}`,
    style,
    head,
    foot: `Marks · Class ${variant}`,
    parts: [...asked.map(({ lesson }) => partOf(lesson)), { page: TOTALS, head: 'Totals' }],
    body: [...sheets, render('mark-totals', totalsView(TOTALS, totals, pages, who, setting))].join('\n'),
  });
}

function chunks(lines: readonly ClassLine[]): MarkRow[][] {
  const rows = lines.map((line, place) => ({ ...whoOf(line, place), variant: line.variant }));
  const spare: MarkRow = { place: '', seat: '', version: '', learner: '', variant: '' };
  return Array.from({ length: Math.max(1, Math.ceil(rows.length / ROWS)) }, (_, page) =>
    Array.from({ length: ROWS }, (__, at) => rows[page * ROWS + at] ?? spare),
  );
}

/** The boxes of a lesson for twelve learners: on a page, or on as many as they need beside one another. */
function tablesOf(
  groups: readonly MarkGroup[],
  rows: readonly MarkRow[],
  who: WhoColumns,
  { width, box }: ClassSetting,
  possible: number,
) {
  const room = width - who.width;
  const shared = bands(groups, room - TOTAL * box);
  const widest = Math.max(
    ...shared.map((band) => band.reduce((sum, group) => sum + group.width, TOTAL * box)),
  );
  // As wide as the page allows: a mark is written by hand.
  const wide = box * Math.min(WIDER, room / widest);
  return shared.map((band, at) => {
    const boxes = band.flatMap((group) => group.boxes.map((_, place) => ({ first: place === 0 })));
    const total = at === shared.length - 1 ? TOTAL * wide : 0;
    const widths = band.flatMap(({ boxes: { length } }) =>
      Array<number>(length).fill((wide * Math.max(length, 2)) / length),
    );
    return {
      groups: band.map((group) => ({ ...group, span: group.boxes.length })),
      boxes,
      widths,
      rows,
      total,
      possible,
      width: who.width + widths.reduce((sum, one) => sum + one, total),
    };
  });
}
