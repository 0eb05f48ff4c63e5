import type { SheetStyle } from '../model.js';

/** Signs of text on a page, and what a drawing takes up, both as they come out on average. */
const ON_A_PAGE = { plain: 1540, large: 720 } as const;
const DRAWING = { plain: 600, large: 500 } as const;
/** Title and contents. */
const BEFORE = 2;

const PIECES = /<svg\b[^]*?<\/svg>|<[^>]*>|[^<]+/g;

/**
 * About where the anchors in some lessons will be, before anything is printed. With it the lists at the end are nearly
 * as long at first as they will be, and need not be printed once more.
 *
 * @param lessons HTML, each of which starts a page
 */
export function firstGuess(lessons: readonly string[], { print }: SheetStyle): ReadonlyMap<string, number> {
  const guess = new Map<string, number>();
  let page = BEFORE;
  for (const html of lessons) {
    page += 1;
    let set = 0;
    for (const [piece] of html.matchAll(PIECES)) {
      const anchor = / id="([^"]+)"/.exec(piece.startsWith('<span') ? piece : '')?.[1];
      if (anchor) guess.set(anchor, page + Math.floor(set / ON_A_PAGE[print]));
      if (piece.startsWith('<svg')) set += DRAWING[print];
      else if (!piece.startsWith('<')) set += piece.trim().length;
    }
    page += Math.floor(set / ON_A_PAGE[print]);
  }
  return guess;
}
