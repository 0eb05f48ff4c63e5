import { InputError } from '../../../diagnostics/errors.js';
import { MM_PER_INCH } from '../../../units/length.js';
import type { Pen } from '../../pen.js';

/** The finest part of a reading in each system, mm. */
export interface Least {
  readonly mm: number;
  readonly inch: number;
}

/**
 * How often the finest part goes into a reading.
 *
 * @throws {InputError} for a reading that falls between two lines
 */
export function linesIn(reading: number, units: keyof Least, least: Least): number {
  const lines = reading / least[units];
  if (Math.abs(lines - Math.round(lines)) < 1e-6) return Math.round(lines);
  const each =
    units === 'mm' ? `${least.mm} mm` : `${Number((least.inch / MM_PER_INCH).toFixed(4))} in, in mm`;
  throw new InputError('reading', reading, `a whole number of lines of ${each}`);
}

/** A graduation: where it stands along its scale on the paper, and how far it goes from its edge; up is below 0. */
export interface Graduation {
  readonly x: number;
  readonly to: number;
}

/** Graduations that rise from one edge. */
export function graduate(pen: Pen, edge: number, graduations: readonly Graduation[]): void {
  if (graduations.length === 0) return;
  pen.stroke('fine', (trace) => {
    for (const { x, to } of graduations) trace.moveTo({ x, y: edge }).lineTo({ x, y: to });
  });
}

/** Whole numbers from one to another, both among them. */
export const wholes = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, Math.floor(to) - Math.ceil(from) + 1) }, (_, i) => Math.ceil(from) + i);
