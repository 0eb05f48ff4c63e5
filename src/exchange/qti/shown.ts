import type { Shown } from '../../problems/shown.js';
import { type Piece, shownView } from '../../sheets/shown-view.js';
import { formatted } from './maths.js';
import { type Child, element, type Xml } from './xml.js';

/** What stands where the learner is to write. */
const BLANK = '____';

/** What is printed under a question: a working with its blanks, or a table, as the sheet has it. */
export function shownBlocks(shown: Shown): Xml[] {
  const { heads = [], rows, lines = [] } = shownView(shown, 'mathml');
  if (rows) return [table(heads, rows)];
  return lines.map(({ number, pieces }) =>
    inOne(element('p', {}, number === '' ? '' : `${number}. `, ...pieces.flatMap(wordsOf))),
  );
}

/** Formulas side by side as one, so that they are heard as one. */
const inOne = ({ xml }: Xml): Xml => ({ xml: xml.replace(/<\/math> <math[^>]*>/g, '') });

/** A piece of a line, with a space before all but the first. */
function wordsOf({ words = BLANK, html }: Piece, place: number): Child[] {
  return [place === 0 ? '' : ' ', html === undefined ? words : formatted(html)];
}

function table(
  heads: readonly string[],
  rows: readonly { readonly head: string; readonly value?: string | undefined }[],
): Xml {
  const row = (...cells: readonly Xml[]): Xml => element('tr', {}, ...cells);
  const head = (scope: string, text: string): Xml => element('th', { scope }, text);
  return element(
    'table',
    {},
    element('thead', {}, row(...heads.map((text) => head('col', text)))),
    element(
      'tbody',
      {},
      ...rows.map((one) => row(head('row', one.head), element('td', {}, one.value ?? BLANK))),
    ),
  );
}
