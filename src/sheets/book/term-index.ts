import { render } from '../templates.js';
import { BACK } from './back.js';
import type { Entry } from './mark-terms.js';
import type { PageOf } from './model.js';
import { pageList } from './page-list.js';

/** The words of the trade and those that the lessons mark, by their first letters, with their pages. */
export function termIndexHtml(entries: readonly Entry[], pageOf: PageOf): string {
  const groups: { letter: string; entries: object[] }[] = [];
  for (const entry of entries) {
    const letter = entry.word.slice(0, 1).toUpperCase();
    if (groups.at(-1)?.letter !== letter) groups.push({ letter, entries: [] });
    groups.at(-1)?.entries.push({ word: entry.word, ...pageList(entry, pageOf) });
  }
  return render('book-index', { ...BACK.index, groups });
}
