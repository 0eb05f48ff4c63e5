import type { ClassSetting } from './class-setting.js';
import type { MarkRow, WhoColumns } from './class-who.js';
import { textWidth } from './text-width.js';

/** Marks to be had in one lesson. */
export interface LessonTotal {
  readonly number: string;
  readonly possible: number;
}

/** Where the lessons are added up, with the variant of each learner: from that a lost sheet is printed again. */
export function totalsView(
  page: string,
  lessons: readonly LessonTotal[],
  pages: readonly (readonly MarkRow[])[],
  who: WhoColumns,
  { width, letters, gap, box }: ClassSetting,
) {
  const code =
    Math.max(
      ...pages.flat().map(({ variant }) => textWidth(variant, letters)),
      textWidth('Variant', letters, 600),
    ) + gap;
  const each = Math.min(3 * box, (width - who.width - code) / (lessons.length + 1));
  return {
    page,
    number: '',
    title: 'Totals',
    who,
    code,
    lessons,
    possible: lessons.reduce((sum, { possible }) => sum + possible, 0),
    each,
    width: who.width + code + each * (lessons.length + 1),
    tables: pages.map((rows) => ({ rows })),
  };
}
