import { answerColumns, type Column } from './answer-columns.js';
import { bands } from './bands.js';
import type { ClassSet } from './class-model.js';
import { type ClassSetting, classSettingOf } from './class-setting.js';
import { type WhoColumns, whoColumns, whoOf } from './class-who.js';
import { demandGlyphs } from './glyphs.js';
import type { SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { partOf } from './part.js';
import { render } from './templates.js';

/**
 * The answers of a whole class, to mark it from: a line for each learner, a column for each answer.
 *
 * @throws {InputError} for a character that cannot be printed
 */
export function classGridHtml(set: ClassSet, style: SheetStyle): string {
  const { head, variant, lessons, lines } = set;
  demandGlyphs([head, lines.map(({ seat, learner }) => [seat, learner])]);
  const setting = classSettingOf(style);
  const who = whoColumns(lines, setting);
  const asked = lessons.map((lesson, at) => ({ lesson, columns: answerColumns(lines, at, setting) }));
  const printed = asked.filter(({ columns }) => columns.length > 0);
  return pageHtml({
    kind: 'class',
    title: `${head.course}: marking grid, class ${variant}`,
    style,
    head,
    foot: `KEY · Class ${variant}`,
    parts: printed.map(({ lesson }) => partOf(lesson)),
    body: printed
      .map(({ lesson, columns }) =>
        render('class-grid', {
          page: partOf(lesson).page,
          number: lesson.number,
          title: lesson.title,
          who,
          moves: columns.some(({ cells }) => cells.some((cell) => /\d\/\d/.test(cell))),
          bands: bands(columns, setting.width - who.width).map((band) => bandView(band, set, who, setting)),
        }),
      )
      .join('\n'),
  });
}

function bandView(columns: readonly Column[], { lines }: ClassSet, who: WhoColumns, { width }: ClassSetting) {
  const least = width - who.width;
  return {
    columns: columns.map((column) => ({ ...column, width: Math.min(column.width, least) })),
    width: Math.min(width, who.width + columns.reduce((sum, column) => sum + column.width, 0)),
    rows: lines.map((line, place) => ({
      ...whoOf(line, place),
      cells: columns.map(({ cells }) => cells[place] ?? ''),
    })),
  };
}
