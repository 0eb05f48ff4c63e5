import type { Lesson } from '../lesson/lesson.js';
import { Faults, type Written } from './fault.js';
import { demandGlyphs, noteGlyphs, noteGlyphsIn } from './glyphs.js';
import { handoutBlocks } from './handout-blocks.js';
import { setText } from './markdown.js';
import type { Handout, SheetStyle } from './model.js';
import { pageHtml } from './page.js';
import { partOf } from './part.js';
import { render } from './templates.js';

/**
 * Whole lessons, to read and keep.
 *
 * @throws {ContentError} with every fault of every lesson's text
 */
export function handoutHtml(handout: Handout, style: SheetStyle): string {
  const { head, lessons } = handout;
  demandGlyphs(head);
  const faults = new Faults();
  const body = lessons.map((lesson) => lessonHtml(lesson, handout, style, faults));
  faults.demandNone();
  return pageHtml({
    kind: 'handout',
    title: `${head.course}: handout`,
    style,
    head,
    foot: head.club,
    parts: lessons.map(partOf),
    body: body.join('\n'),
  });
}

function lessonHtml(lesson: Lesson, { head }: Handout, style: SheetStyle, faults: Faults): string {
  const { values, number, title, part, goals, needs, cautions, sources, workings } = lesson;
  const body = bodyOf(lesson);
  noteGlyphs(body, faults);
  noteGlyphsIn(
    { title, part, goals, needs, cautions, sources, workings },
    { file: lesson.file, about: 'the lesson' },
    faults,
  );
  return render('lesson', {
    page: partOf(lesson).page,
    number,
    title,
    part,
    goals,
    needs,
    cautions,
    sources,
    kit: head.kit,
    body: setText(body, { values, style, blocks: handoutBlocks(lesson, style), faults }),
  });
}

function bodyOf({ file, body, bodyLine }: Lesson): Written {
  return { file, text: body, line: bodyLine, about: 'the text' };
}
