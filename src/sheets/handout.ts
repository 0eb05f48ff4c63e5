import type { Lesson } from '../lesson/lesson.js';
import { Faults, type Written } from './fault.js';
import { demandGlyphs, noteGlyphs, noteGlyphsIn } from './glyphs.js';
import { chapterOf, handoutBlocks } from './handout-blocks.js';
import { setText } from './markdown.js';
import type { Handout, SheetStyle } from './model.js';
import { Numbering } from './numbering.js';
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
  const body = lessons.map((lesson) => lessonHtml(lesson, { style, kit: head.kit, faults }));
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

/** What a lesson is printed with. */
export interface LessonSetting {
  readonly style: SheetStyle;
  readonly kit: string;
  readonly faults: Faults;
  /** Where its problems are, where that is not on the problem sheet. */
  readonly problemsAt?: string;
}

/** A lesson as it is read and kept; its anchor is the name of its pages. */
export function lessonHtml(lesson: Lesson, { style, kit, faults, problemsAt }: LessonSetting): string {
  const { values, number, title, part, goals, needs, cautions, sources, workings } = lesson;
  const { page } = partOf(lesson);
  const body = bodyOf(lesson);
  noteGlyphs(body, faults);
  noteGlyphsIn(
    { title, part, goals, needs, cautions, sources, workings },
    { file: lesson.file, about: 'the lesson' },
    faults,
  );
  const numbering = new Numbering(chapterOf(lesson), page);
  const blocks = handoutBlocks(lesson, style, { numbering, problemsAt });
  return render('lesson', {
    page,
    number,
    title,
    part,
    goals,
    needs,
    cautions,
    sources,
    kit,
    body: setText(body, {
      values,
      style,
      blocks,
      numbering,
      faults,
    }),
  });
}

function bodyOf({ file, body, bodyLine }: Lesson): Written {
  return { file, text: body, line: bodyLine, about: 'the text' };
}
