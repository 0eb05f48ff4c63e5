import { Faults } from '../fault.js';
import { demandGlyphs } from '../glyphs.js';
import type { SheetStyle } from '../model.js';
import { documentHtml, paperCss } from '../page.js';
import { partOf } from '../part.js';
import { render } from '../templates.js';
import { OWN_PARTS } from './back.js';
import { bibliographyHtml } from './bibliography.js';
import { contentsHtml } from './contents.js';
import { firstGuess } from './first-guess.js';
import { glossaryHtml } from './glossary.js';
import { lessonPartHtml } from './lesson-part.js';
import { TermMarks } from './mark-terms.js';
import type { CourseBook, PageOf } from './model.js';
import { runningHeads } from './running-heads.js';
import { symbolsHtml } from './symbols.js';
import { termIndexHtml } from './term-index.js';
import { titleHtml } from './title.js';

/**
 * The course book: lessons with their problems, and what helps to find one's way in them. All but the page numbers is
 * set at once; the document is made anew for each guess at them.
 *
 * @throws {ContentError} with every fault of every text
 */
export function courseBookHtml(
  book: CourseBook,
  style: SheetStyle,
): (pages: ReadonlyMap<string, number>) => string {
  const { head, lessons } = book;
  demandGlyphs([head, book.variant]);
  const faults = new Faults();
  noteNames(book, faults);
  const marks = new TermMarks();
  const parts = lessons.map((lesson) => marks.mark(lessonPartHtml(lesson, book, style, faults)));
  faults.demandNone();
  const { entries } = marks;
  const title = titleHtml(book, style);
  const symbols = symbolsHtml(book, style.units);
  const sources = bibliographyHtml(book);
  const css = [
    paperCss({ kind: 'book', style }),
    runningHeads(book, style, [...OWN_PARTS, ...lessons.map(({ lesson }) => partOf(lesson))]),
  ].join('\n');
  const guess = firstGuess(parts, style);
  return (pages) => {
    const pageOf: PageOf = (anchor) => (pages.size > 0 ? pageIn(pages, anchor) : guess.get(anchor));
    const body = [
      title,
      contentsHtml(book, pageOf),
      ...parts,
      glossaryHtml(entries, pageOf),
      symbols,
      sources,
      termIndexHtml(entries, pageOf),
      // Chromium tells the page of an anchor only where something links to it.
      render('book-anchors', {
        anchors: entries.flatMap(({ mentions }) => mentions.map(({ anchor }) => anchor)),
      }),
    ].join('\n');
    return documentHtml({ kind: 'book', title: `${head.course}: course book`, style, body }, css);
  };
}

/** @throws {Error} for an anchor that did not land on any page */
function pageIn(pages: ReadonlyMap<string, number>, anchor: string): number {
  const page = pages.get(anchor);
  if (page === undefined) throw new Error(`${anchor} is on no page of the book`);
  return page;
}

/** A lesson's pages bear the name of its folder: with two of one name a page number could be the other's. */
function noteNames({ lessons }: CourseBook, faults: Faults): void {
  const seen = new Set<string>();
  for (const { lesson } of lessons) {
    const { page } = partOf(lesson);
    if (seen.has(page))
      faults.add(
        'name',
        { file: lesson.file, text: '', line: undefined, about: 'the course book' },
        0,
        1,
        `another lesson of it is in a folder called ${lesson.name} as well`,
        'Rename one of the folders.',
      );
    seen.add(page);
  }
}
