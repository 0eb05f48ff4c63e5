import { InputError } from '../../diagnostics/errors.js';
import { type Flanks, wheelFlanks } from '../../geometry/involute/flank.js';
import { angle, length, orElse, whole } from '../quantity.js';

/** What involute wheels are given alike. */
export const teeth = whole('z', 'teeth', 5, 1000);
export const module = length('m', 'module', 0.05, 20);
export const pressureAngle = orElse(angle('A', 'pressure angle', 10, 30), 20);

export interface InvoluteGiven {
  readonly teeth: number;
  readonly module: number;
  readonly pressureAngle: number;
}

/** Degrees as the geometry takes them. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** The flanks of the wheel that is asked about. */
export const flanksOf = (g: InvoluteGiven): Flanks =>
  wheelFlanks(g.teeth, g.module, radians(g.pressureAngle));

/** What serves a wheel, as it is printed. */
export interface Serving {
  readonly least: string;
  readonly most: string;
  readonly unit: 'mm' | 'teeth';
}

/** @throws {InputError} unless a value lies in what serves this wheel */
export function refuseOutside(key: string, value: number, { least, most, unit }: Serving, why: string): void {
  if (value < Number(least) || value > Number(most))
    throw new InputError(key, value, `${least} to ${most} ${unit} for this wheel: ${why}`);
}
