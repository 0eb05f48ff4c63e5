import { withUnit } from '../calculations/working.js';
import { formatNumber, roundTo, type UnitSystem } from '../units/format.js';
import { MM_PER_INCH } from '../units/length.js';

const THIN = '\u202F';

/** How values of one unit are told on a sheet. */
export interface Measure {
  /** What stands beside the number; empty for a count. */
  readonly label: string;
  /** The number that is shown for a value in its own unit. */
  shown(value: number): number;
  /** A shown number with its label. */
  words(shown: number, places: number): string;
}

/** The measure of a unit of the catalogue (`mm`, `°`, `rev/min`, `%`, none) on sheets of a system of units. */
export function measureOf(unit: string, system: UnitSystem): Measure {
  const inches = unit === 'mm' && system === 'inch';
  const label = inches ? 'in' : unit;
  const gap = label === '' || label === '°' ? '' : THIN;
  return {
    label,
    shown: (value) => (inches ? value / MM_PER_INCH : value),
    words: (shown, places) => `${formatNumber(shown, places)}${gap}${label}`,
  };
}

/** A value in a sentence: figures enough to follow the working, none to spare. */
export function inWords(value: unknown, unit: string, system: UnitSystem): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.map((one) => inWords(one, unit, system)).join(', ') || 'none';
  if (typeof value !== 'number') return String(value);
  return withUnit(value, unit, system);
}

/** Degrees to the nearest minute or second: `6° 26′`, `6° 25′ 43″`. */
export function angleInWords(degrees: number, step: 'minute' | 'second'): string {
  const parts = step === 'minute' ? 60 : 3600;
  const total = roundTo(Math.abs(degrees) * parts, 0);
  const whole = Math.floor(total / parts);
  const rest = total - whole * parts;
  const sign = degrees < 0 && total > 0 ? '−' : '';
  return step === 'minute'
    ? `${sign}${whole}°\u00A0${rest}′`
    : `${sign}${whole}°\u00A0${Math.floor(rest / 60)}′\u00A0${rest % 60}″`;
}

/** Decimals that a step needs: 2 for 0.01, 0 for 5, 1 for 0.5. */
export function placesOf(step: number): number {
  const text = String(Number(step.toPrecision(6)));
  return text.includes('e-') ? Number(text.split('e-')[1]) : (text.split('.')[1]?.length ?? 0);
}
