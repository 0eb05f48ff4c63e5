import { texSides } from '../formula/tex.js';
import type { Shown, ShownLine } from '../problems/shown.js';
import { type MathsOutput, setOwnMaths } from './maths.js';
import { rightSides } from './right-sides.js';

/** A piece of a line: words, a formula as HTML, or a blank to be written on. */
export interface Piece {
  readonly words?: string;
  readonly html?: string;
  readonly blank?: 'short' | 'long';
  /** It and the piece that closes what it opens are kept in one line. */
  readonly opens?: boolean;
  readonly closes?: boolean;
}

/** A working with its blanks, or a table, as its template wants it. */
export interface ShownView {
  readonly heads?: readonly string[];
  readonly rows?: readonly { readonly head: string; readonly value?: string | undefined }[];
  readonly lines?: readonly { readonly number: string; readonly pieces: readonly Piece[] }[];
}

/** What a problem prints of a working or a table. */
export function shownView(shown: Shown, output: MathsOutput = 'html'): ShownView {
  if (shown.kind === 'table') return { heads: shown.heads, rows: shown.rows };
  return {
    lines: shown.lines.map((line, at) => ({
      number: shown.numbered ? String(at + 1) : '',
      pieces: piecesOf(line, output),
    })),
  };
}

function piecesOf(line: ShownLine, output: MathsOutput): Piece[] {
  if ('say' in line) return line.blank ? toFill(line.say) : [{ words: line.say }];
  const { left, formula, result } = line;
  const equals: Piece = { html: setOwnMaths('=', 'inline', output), opens: true };
  const start: Piece[] = left === '' ? [] : [{ html: setOwnMaths(leftTex(left, formula), 'inline', output) }];
  const end: Piece =
    result === undefined ? { blank: formula === undefined ? 'long' : 'short' } : { words: result };
  return joined([...start, ...middleOf(line, output), end], equals);
}

/** Words with a blank after them, which takes its equals sign along. */
function toFill(say: string): Piece[] {
  const words = say.replace(/\s*=$/, '');
  const blank: Piece = { blank: 'long' };
  return words === say
    ? [{ words }, blank]
    : [{ words }, { words: '=', opens: true }, { ...blank, closes: true }];
}

/** The rule, and the numbers in it; a blank for the numbers where the result is left out as well. */
function middleOf(
  { formula, numbers, result }: Exclude<ShownLine, { readonly say: string }>,
  output: MathsOutput,
): Piece[] {
  if (formula === undefined) return [];
  const sides = numbers ? rightSides(formula, numbers, result) : [texSides(formula).right];
  return [
    ...sides.map((tex) => ({ html: setOwnMaths(tex, 'line', output) })),
    ...(numbers === undefined && result === undefined ? [{ blank: 'short' } as const] : []),
  ];
}

const leftTex = (left: string, formula: string | undefined): string =>
  texSides(formula ?? `${left} = 0`).left ?? '';

const joined = (pieces: readonly Piece[], between: Piece): Piece[] =>
  pieces.flatMap((piece, at) => (at === 0 ? [piece] : [between, { ...piece, closes: true }]));
