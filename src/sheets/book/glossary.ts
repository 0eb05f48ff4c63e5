import { render } from '../templates.js';
import { BACK } from './back.js';
import type { Entry } from './mark-terms.js';
import type { PageOf } from './model.js';
import { pageList } from './page-list.js';

/** The words of the trade that stand in the lessons, each in a plain sentence, and the pages on which they stand. */
export function glossaryHtml(entries: readonly Entry[], pageOf: PageOf): string {
  return render('book-glossary', {
    ...BACK.glossary,
    terms: entries.flatMap((entry) => (entry.term ? [{ ...entry.term, ...pageList(entry, pageOf) }] : [])),
  });
}
