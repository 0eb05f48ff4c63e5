import { systemOf } from '../../calculations/working.js';
import { symbolTex } from '../../formula/tex.js';
import { measureOf } from '../../problems/show.js';
import type { UnitSystem } from '../../units/format.js';
import { setOwnMaths } from '../maths.js';
import { render } from '../templates.js';
import { BACK } from './back.js';
import { type LessonLink, linkTo } from './lesson-links.js';
import type { Letter } from './letters.js';
import type { BookLesson, CourseBook } from './model.js';
import { formulasIn, meaningOf } from './symbols-in.js';

/** A letter with one of its meanings, and the lessons in which it has that. */
export interface Meant extends Letter {
  readonly lessons: readonly LessonLink[];
}

/** The letters of the formulas in the book, each with its meaning and unit. */
export function symbolsHtml({ lessons }: CourseBook, system: UnitSystem): string {
  let before = '';
  return render('book-symbols', {
    ...BACK.symbols,
    rows: symbolsOfBook(lessons).map(({ symbol, meaning, unit, lessons: links }) => {
      const again = symbol === before;
      before = symbol;
      return {
        symbol: again ? '' : setOwnMaths(symbolTex(symbol)),
        meaning,
        unit: measureOf(unit, systemOf(symbol, system)).label,
        lessons: links,
      };
    }),
  });
}

/** Every letter that is printed in a formula; one that means several things has a row for each. */
export function symbolsOfBook(lessons: readonly BookLesson[]): Meant[] {
  const rows = new Map<string, Letter & { readonly links: Map<string, LessonLink> }>();
  for (const one of lessons) {
    const link = linkTo(one.lesson);
    for (const formulas of formulasIn(one))
      for (const symbol of new Set(formulas.symbols)) {
        const letter = meaningOf(formulas, symbol);
        if (!letter) continue;
        const key = `${symbol} ${letter.meaning} ${letter.unit}`;
        const row = rows.get(key) ?? { ...letter, links: new Map() };
        row.links.set(link.anchor, link);
        rows.set(key, row);
      }
  }
  return [...rows.values()]
    .map(({ links, ...letter }) => ({ ...letter, lessons: [...links.values()] }))
    .sort((a, b) => inOrder(a.symbol, b.symbol));
}

/** Small letters before capitals, plain before those with an index. */
function inOrder(a: string, b: string): number {
  const key = (symbol: string) => [symbol.slice(0, 1).toLowerCase(), symbol];
  const [[letterA = '', wholeA = ''], [letterB = '', wholeB = '']] = [key(a), key(b)];
  return (
    letterA.localeCompare(letterB, 'en-GB') || wholeA.localeCompare(wholeB, 'en-GB', { caseFirst: 'lower' })
  );
}
