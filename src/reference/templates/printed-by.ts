import type { Desk } from '../desk.js';
import type { Piece } from './template.js';

/** A sentence that tells what one printer makes of a piece, across the page and down it. */
export function printedBy(
  desk: Desk,
  printer: { readonly x: number; readonly y: number },
  { words, length }: Piece['over'],
): string {
  const [across, down] = [printer.x, printer.y].map((scale) =>
    desk.work('print.scale', { length, bar: 100, measured: 100 * scale }),
  );
  const said = (text: string | undefined): string => `${text}\u00A0${desk.lengths}`;
  const whole = said(across?.lengthOf(length));
  return (
    `On a printer that makes ${printer.x} of 1 across and ${printer.y} of 1 down: ` +
    `${words} should be ${whole}, and comes out ${said(across?.length('printed').text)} across ` +
    `and ${said(down?.length('printed').text)} down. This sheet is not altered for it.`
  );
}
