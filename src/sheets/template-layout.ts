import { InputError } from '../diagnostics/errors.js';
import type { CheckBar } from '../reference/templates/check-bar.js';
import type { Piece, Template } from '../reference/templates/template.js';
import type { SheetStyle } from './model.js';
import { type Board, type BoardOrder, boardsOf } from './template-board.js';
import { headingsOf, templateSettingOf } from './template-setting.js';

/** What 1 mm comes out as on one printer, across the page and down it. */
export interface Printer {
  readonly x: number;
  readonly y: number;
}

/** What is to be laid out. */
interface ToLayOut {
  readonly template: Template;
  readonly bar: CheckBar;
  readonly correctedFor?: Printer | undefined;
}

/** Letters of `, sheet A2 of 12` after a part’s name. */
const TILE = 16;

export interface Layout {
  readonly turned: boolean;
  /** For each piece; none for one that is drawn only where it fits a page whole. */
  readonly boards: readonly (readonly Board[])[];
}

/** All on paper of one kind: upright, unless fewer pages are wanted when it lies on its side. */
export function layOut(sheet: ToLayOut, style: SheetStyle): Layout {
  const upright = laidOut(sheet, style, false);
  // A page for each piece is the fewest.
  if (pagesOf(upright) === sheet.template.pieces.length) return upright;
  const lying = lyingDown(sheet, style);
  return lying && pagesOf(lying) < pagesOf(upright) ? lying : upright;
}

function laidOut(sheet: ToLayOut, style: SheetStyle, turned: boolean): Layout {
  return { turned, boards: ordersFor(sheet, style, turned).map(boardsOf) };
}

/** On its side a page may be too low for the bars themselves: then it is not to be had. */
function lyingDown(sheet: ToLayOut, style: SheetStyle): Layout | undefined {
  try {
    const layout = laidOut(sheet, style, true);
    const heights = ordersFor(sheet, style, true).map(({ setting }) => setting.height);
    const fits = layout.boards.every((ofPiece, at) =>
      ofPiece.every(({ drawing }) => drawing.height <= (heights[at] ?? 0)),
    );
    return fits ? layout : undefined;
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** A piece that is not drawn saves no page. */
const pagesOf = ({ boards }: Layout): number =>
  boards.reduce((sum, ofPiece) => sum + Math.max(1, ofPiece.length), 0);

export function ordersFor(
  { template, bar, correctedFor: printer }: ToLayOut,
  style: SheetStyle,
  turned: boolean,
): BoardOrder[] {
  const setting = templateSettingOf(style, turned);
  return template.pieces.map((piece) => {
    const headings = headingsOf(style.print, piece.part.length + TILE, setting.width);
    return {
      piece,
      setting: { ...setting, height: setting.height - headings },
      units: style.units,
      bar,
      sentences: sentencesFor(piece, bar, printer),
      printer,
    };
  });
}

/** What stands beside the bars of every page. */
function sentencesFor(
  { scale }: Piece,
  { least, most, unit }: CheckBar,
  printer: Printer | undefined,
): string[] {
  return [
    printer ? correction(printer) : (scale ?? 'True scale: 1 : 1.'),
    ...(printer && scale ? [scale] : []),
    'Print at 100 %, never fitted to the page.',
    `Use it only if both bars measure ${least.text} to ${most.text}\u00A0${unit}.`,
  ];
}

const correction = ({ x, y }: Printer): string =>
  `Stretched for one printer, which makes ${x} of 1 across and ${y} of 1 down.`;
