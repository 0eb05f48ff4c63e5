import type { Entry } from './mark-terms.js';
import type { PageLink, PageOf } from './model.js';

/** So many numbers tell where to look; more tell that the word is everywhere. */
const MOST = 10;
/** What stands for a page that is not known yet: as wide as most. */
const UNKNOWN = '000';

/** The pages on which a word stands, runs of them together. */
export interface PageList {
  readonly pages: readonly PageLink[];
  /** Where there are too many to be named: the first, from which it is found throughout. */
  readonly from?: PageLink;
}

interface Run {
  readonly first: number;
  readonly last: number;
  readonly anchor: string;
  readonly main: boolean;
}

/** Where to find a word: the pages, or those where it is explained and the first of all. */
export function pageList({ mentions }: Entry, pageOf: PageOf): PageList {
  const places = new Map<number, { readonly anchor: string; main: boolean }>();
  for (const { anchor, main } of mentions) {
    const page = pageOf(anchor) ?? 0;
    const known = places.get(page);
    if (known) known.main ||= main;
    else places.set(page, { anchor, main });
  }
  const runs: Run[] = [];
  for (const [page, { anchor, main }] of [...places].sort(([a], [b]) => a - b)) {
    const before = runs.at(-1);
    if (before && before.last === page - 1 && !before.main && !main)
      runs[runs.length - 1] = { ...before, last: page };
    else runs.push({ first: page, last: page, anchor, main });
  }
  if (runs.length <= MOST) return { pages: runs.map(linkOf) };
  const [first] = runs as [Run];
  return {
    pages: runs
      .filter(({ main }) => main)
      .slice(0, MOST)
      .map(linkOf),
    from: linkOf({ ...first, last: first.first }),
  };
}

function linkOf({ first, last, anchor, main }: Run): PageLink {
  return { anchor, main, said: first === last ? pageWord(first) : `${first}–${last}` };
}

/** A page number as it is printed; of one that is not known yet, its room. */
export function pageWord(page: number | undefined): string {
  return page ? String(page) : UNKNOWN;
}
