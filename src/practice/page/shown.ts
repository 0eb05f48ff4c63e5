import type { Piece, ShownView } from '../../sheets/shown-view.js';
import { element, heard, withHtml } from './element.js';

/** A working with its blanks, or a table. */
export function shownElement({ heads, rows = [], lines = [] }: ShownView): HTMLElement {
  if (!heads) {
    const made = lines.map(({ number, pieces }) =>
      element('p', {}, number === '' ? undefined : `${number}. `, ...pieces.flatMap(pieceOf)),
    );
    return element('div', { class: 'shown' }, ...made);
  }
  const body = rows.map(({ head, value }) =>
    element('tr', {}, element('th', { scope: 'row' }, head), element('td', {}, value ?? blank())),
  );
  const headRow = element('tr', {}, ...heads.map((head) => element('th', { scope: 'col' }, head)));
  return element('table', { class: 'shown' }, element('thead', {}, headRow), element('tbody', {}, ...body));
}

function pieceOf({ words, html, blank: gap }: Piece): (Node | string)[] {
  const piece = gap ? blank() : html === undefined ? (words ?? '') : withHtml('span', {}, html);
  return [piece, ' '];
}

const blank = (): HTMLElement => element('span', { class: 'blank' }, heard('blank'));
