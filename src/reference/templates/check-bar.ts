import { MM_PER_INCH } from '../../units/length.js';
import type { Desk } from '../desk.js';
import type { Figure } from '../sheet.js';

/** How far a bar may be out before nothing is cut by the print, as a share: common practice, no source. */
export const LIMIT = 0.002;

/** The bar that is printed across and down every template. */
export interface CheckBar {
  /** mm */
  readonly length: number;
  /** Between its ticks, mm. */
  readonly tick: number;
  readonly unit: 'mm' | 'in';
  /** As printed, without the unit. */
  readonly words: string;
  /** What it may measure, at least and at most. */
  readonly least: Figure;
  readonly most: Figure;
}

/** The bar in the units of the sheet, with what it may measure. */
export function checkBarFor(desk: Desk): CheckBar {
  const [length, tick, words, places] =
    desk.units === 'mm' ? [100, 10, '100', 1] : [4 * MM_PER_INCH, MM_PER_INCH / 2, '4', 2];
  const at = (share: number): Figure =>
    desk.work('print.scale', { length, bar: length, measured: share * length }).length('printed', places);
  return { length, tick, words, unit: desk.lengths, least: at(1 - LIMIT), most: at(1 + LIMIT) };
}
