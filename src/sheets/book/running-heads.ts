import { cssString, shortened } from '../css-string.js';
import type { SheetStyle } from '../model.js';
import type { Part } from '../page.js';
import { settingOf } from '../setting.js';
import type { CourseBook } from './model.js';

/** Size of the running heads, pt, and the share of the text's width that book, lesson and foot may fill. */
const HEADS = { points: { plain: 9, large: 14 }, book: 0.37, part: 0.6, foot: 0.73 } as const;
const MM_PER_POINT = 25.4 / 72;

/** At the head the book on the left and the lesson on the right; at the foot the variant, the club and the page. */
export function runningHeads(
  { head, variant, lessons }: CourseBook,
  style: SheetStyle,
  parts: readonly Part[],
): string {
  const points = HEADS.points[style.print];
  const room = settingOf(style).maxWidth;
  const box = (place: string, content: string, more = '') =>
    `@${place} { font-size: ${points}pt; content: ${content}; ${more}}`;
  const said = (text: string, share: number) =>
    cssString(shortened(text, share * room, points * MM_PER_POINT));
  const asked = lessons.some(({ problems }) => problems.length > 0);
  // What is too long loses its end: never the code.
  const foot = [asked && `Variant ${variant}`, head.club].filter(Boolean).join(' · ');
  const all = [
    box('top-left', said(head.course, HEADS.book), 'width: 38%; '),
    box('bottom-left', said(foot, HEADS.foot)),
    box('bottom-right', 'counter(page)'),
  ];
  const each = parts.map(({ page, head: part }) =>
    part === ''
      ? `@page ${page} { @top-left { content: none; } @top-right { content: none; } @bottom-left { content: none; } @bottom-right { content: none; } } .${page} { page: ${page}; }`
      : `@page ${page} { ${box('top-right', said(part, HEADS.part), 'width: 62%; ')} } .${page} { page: ${page}; }`,
  );
  return [`@page { ${all.join(' ')} }`, ...each].join('\n');
}
