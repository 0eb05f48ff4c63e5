import { texSides } from '../formula/tex.js';
import type { Shown, ShownLine } from '../problems/shown.js';
import { setOwnMaths } from './maths.js';

/** A piece of a line: words, a formula as HTML, or a blank to be written on. */
interface Piece {
  readonly words?: string;
  readonly html?: string;
  readonly blank?: 'short' | 'long';
}

/** A working with its blanks, or a table, as its template wants it. */
export interface ShownView {
  readonly heads?: readonly string[];
  readonly rows?: readonly { readonly head: string; readonly value?: string | undefined }[];
  readonly lines?: readonly { readonly number: string; readonly pieces: readonly Piece[] }[];
}

/** What a problem prints of a working or a table. */
export function shownView(shown: Shown): ShownView {
  if (shown.kind === 'table') return { heads: shown.heads, rows: shown.rows };
  return {
    lines: shown.lines.map((line, at) => ({
      number: shown.numbered ? String(at + 1) : '',
      pieces: piecesOf(line),
    })),
  };
}

function piecesOf(line: ShownLine): Piece[] {
  if ('say' in line)
    return [
      ...(line.say === '' ? [] : [{ words: line.say }]),
      ...(line.blank ? [{ blank: 'long' } as const] : []),
    ];
  const { left, formula, numbers, result } = line;
  const equals: Piece = { html: setOwnMaths('=') };
  const start: Piece[] = left === '' ? [] : [{ html: setOwnMaths(leftTex(left, formula)) }];
  const end: Piece =
    result === undefined ? { blank: formula === undefined ? 'long' : 'short' } : { words: result };
  return joined([...start, ...middleOf(formula, numbers, result), end], equals);
}

/** The rule, and the numbers in it; a blank for the numbers where the result is left out as well. */
function middleOf(
  formula: string | undefined,
  numbers: Readonly<Record<string, string>> | undefined,
  result: string | undefined,
): Piece[] {
  if (formula === undefined) return [];
  const rule = texSides(formula).right;
  if (numbers === undefined)
    return [
      { html: setOwnMaths(rule, 'line') },
      ...(result === undefined ? [{ blank: 'short' } as const] : []),
    ];
  const withNumbers = texSides(formula, numbers).right;
  return [...new Set([rule, withNumbers])].map((tex) => ({ html: setOwnMaths(tex, 'line') }));
}

const leftTex = (left: string, formula: string | undefined): string =>
  texSides(formula ?? `${left} = 0`).left ?? '';

const joined = (pieces: readonly Piece[], between: Piece): Piece[] =>
  pieces.flatMap((piece, at) => (at === 0 ? [piece] : [between, piece]));
