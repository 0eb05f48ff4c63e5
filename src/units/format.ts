import { MM_PER_INCH } from './length.js';

/** The two ways a sheet can state lengths. */
export type UnitSystem = 'mm' | 'inch';

/** Thin space between a number and its unit, as ISO 80000-1 asks. */
const THIN = '\u202F';

/**
 * A number for the reader with a fixed count of decimals; half away from zero on the decimal figures, so that
 * 1.005 prints as 1.01 and not as binary arithmetic has it. A minus is a real minus sign.
 */
export function formatNumber(value: number, places: number): string {
  const text = roundTo(value, places).toFixed(places);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** Rounds half away from zero at a decimal place, on the shortest decimal that names the value. */
export function roundTo(value: number, places: number): number {
  if (places >= 0 && Number.isSafeInteger(value)) return value;
  const shifted = Number(`${Math.abs(Number(value.toPrecision(13)))}e${places}`);
  if (!Number.isFinite(shifted)) return Number(value.toFixed(places));
  const size = Number(`${Math.round(shifted)}e${-places}`);
  return value < 0 ? -size : size;
}

/** A length for the reader: `50.21 mm` or `1.977 in`; inches carry one more decimal than millimetres. */
export function formatLength(mm: number, system: UnitSystem = 'mm', places = 2): string {
  return system === 'mm'
    ? `${formatNumber(mm, places)}${THIN}mm`
    : `${formatNumber(mm / MM_PER_INCH, places + 1)}${THIN}in`;
}
