import { InputError } from '../diagnostics/errors.js';
import { type Fraction, fraction } from '../geometry/fractions.js';
import { parseAngle } from '../units/angle.js';
import { parseFraction } from '../units/fraction.js';
import { parseLength } from '../units/length.js';

/** One value a calculation is given: how it is named, what is accepted, and how it is read. */
export interface Quantity<T> {
  /** Symbol in formulas; absent for lists and choices. */
  readonly symbol?: string;
  readonly unit: string;
  /** What a reader calls it. */
  readonly name: string;
  /** What is accepted, in words, for the one-line refusal. */
  readonly accepts: string;
  /** Used when nothing is given; a calculation may also ask for none. */
  readonly fallback?: T;
  readonly optional?: true;
  /** Reads a number, a string as typed, or a list; undefined when it is not acceptable. */
  read(raw: unknown): T | undefined;
}

/** Quantities by key, as a calculation declares them. */
export type Quantities = Readonly<Record<string, Quantity<any>>>;

/** The values that quantities read to. */
export type ValuesOf<G extends Quantities> = {
  readonly [K in keyof G]: G[K] extends Quantity<infer T>
    ? G[K] extends { optional: true }
      ? T | undefined
      : T
    : never;
};

const DECIMAL = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d{1,3})?$/i;

function toNumber(raw: unknown): number | undefined {
  if (typeof raw === 'number') return raw;
  if (typeof raw === 'string' && DECIMAL.test(raw.trim())) return Number(raw);
  return undefined;
}

const within = (value: number | undefined, least: number, most: number) =>
  value !== undefined && value >= least && value <= most ? value : undefined;

/** A whole number in a closed range. */
export function whole(symbol: string, name: string, least: number, most: number): Quantity<number> {
  return {
    symbol,
    name,
    unit: '',
    accepts: `a whole number from ${least} to ${most}`,
    read: (raw) => {
      const value = within(toNumber(raw), least, most);
      return Number.isInteger(value) ? value : undefined;
    },
  };
}

/** A length in a closed range of mm; a string may carry a unit, such as `1/32in`. */
export function length(symbol: string, name: string, least: number, most: number): Quantity<number> {
  return {
    symbol,
    name,
    unit: 'mm',
    accepts: `a length from ${least} to ${most} mm, such as 0.8, 0.8mm or 1/32in`,
    read: (raw) => within(typeof raw === 'string' ? parseLength(raw) : toNumber(raw), least, most),
  };
}

/** A plain number in a closed range, in the unit named. */
export function number(
  symbol: string,
  name: string,
  unit: string,
  least: number,
  most: number,
): Quantity<number> {
  return {
    symbol,
    name,
    unit,
    accepts: `a number from ${least} to ${most}${unit && ` ${unit}`}`,
    read: (raw) => within(toNumber(raw), least, most),
  };
}

/** One of a few names. A number that spells a name is taken as the name, so `2.76` and 2.76 are the same. */
export function choice<const T extends string>(name: string, values: readonly T[]): Quantity<T> {
  return {
    name,
    unit: '',
    accepts: `one of ${values.join(', ')}`,
    read: (raw) =>
      values.find(
        (value) =>
          value === raw ||
          (typeof raw !== 'object' && DECIMAL.test(value) && toNumber(raw) === Number(value)),
      ),
  };
}

/** An angle in a closed range of degrees; a string may be `5.625` or `5d37m30s`. */
export function angle(symbol: string, name: string, least: number, most: number): Quantity<number> {
  return {
    symbol,
    name,
    unit: '°',
    accepts: `an angle from ${least} to ${most} degrees, such as 5.625 or 5d37m30s`,
    read: (raw) => within(typeof raw === 'string' ? parseAngle(raw) : toNumber(raw), least, most),
  };
}

/** An exact number above 0 and up to a most, as `12`, `7.5`, `5/7` or `1 1/14`; in lowest terms. */
export function exact(name: string, unit: string, most: number): Quantity<Fraction> {
  return {
    name,
    unit,
    accepts: `a number above 0 and up to ${most}, such as 12, 7.5 or 5/7`,
    read: (raw) => {
      const text = typeof raw === 'number' ? decimal(raw) : raw;
      const parsed = typeof text === 'string' ? parseFraction(text) : isFraction(text) ? text : undefined;
      if (!parsed || parsed.numerator <= 0 || parsed.numerator > most * parsed.denominator) return undefined;
      return fraction(parsed.numerator, parsed.denominator);
    },
  };
}

/** A number as it is written, without an exponent; nothing for what has no such form. */
const decimal = (value: number): string | undefined =>
  /^[\d.]+$/.test(String(value)) ? String(value) : undefined;

const isFraction = (raw: unknown): raw is Fraction =>
  typeof raw === 'object' &&
  raw !== null &&
  'numerator' in raw &&
  'denominator' in raw &&
  Number.isSafeInteger(raw.numerator) &&
  Number.isSafeInteger(raw.denominator) &&
  (raw.denominator as number) > 0;

/** Up to 100 different whole numbers, as a list or comma-separated. */
export function wholes(name: string, least: number, most: number): Quantity<readonly number[]> {
  const list = counts(name, least, most);
  return {
    ...list,
    read: (raw) => {
      const values = list.read(raw);
      return values && [...new Set(values)];
    },
  };
}

/** Up to so many whole numbers in the order given, repeats kept, as a list or comma-separated. */
export function counts(
  name: string,
  least: number,
  most: number,
  longest = 100,
): Quantity<readonly number[]> {
  const one = whole('', name, least, most);
  return {
    name,
    unit: '',
    accepts: `1 to ${longest} whole numbers from ${least} to ${most}, such as 15,16,17`,
    read: (raw) => listOf(one, raw, longest),
  };
}

/** Up to so many lengths in the order given, repeats kept, as a list or comma-separated. */
export function lengths(
  name: string,
  least: number,
  most: number,
  longest = 300,
): Quantity<readonly number[]> {
  const one = length('', name, least, most);
  return {
    name,
    unit: 'mm',
    accepts: `1 to ${longest} lengths from ${least} to ${most} mm, such as 2.5,3.3 or 1/8in`,
    read: (raw) => listOf(one, raw, longest),
  };
}

/** Reads each part of a list; undefined when one is not acceptable, or there are none or too many. */
export function listOf<T>(one: Quantity<T>, raw: unknown, longest: number): T[] | undefined {
  const parts =
    typeof raw === 'string'
      ? raw.length > 12 * longest
        ? []
        : raw.split(',')
      : typeof raw === 'number'
        ? [raw]
        : raw;
  if (!Array.isArray(parts) || parts.length === 0 || parts.length > longest) return undefined;
  const values = parts.map((part) => one.read(part));
  return values.includes(undefined) ? undefined : (values as T[]);
}

/** The same quantity with a value for when none is given. */
export function orElse<T>(quantity: Quantity<T>, fallback: T): Quantity<T> {
  return { ...quantity, fallback };
}

/** The same quantity, which may be left out. */
export function optional<T>(quantity: Quantity<T>): Quantity<T> & { readonly optional: true } {
  return { ...quantity, optional: true };
}

/**
 * Reads the values a calculation is given.
 *
 * @throws {InputError} for an unknown key, a missing value, or one that is not accepted
 */
export function readGiven<G extends Quantities>(
  quantities: G,
  raw: Readonly<Record<string, unknown>>,
): ValuesOf<G> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    throw new InputError('given', raw, `values by name: ${Object.keys(quantities).join(', ')}`);
  for (const key of Object.keys(raw))
    if (!Object.hasOwn(quantities, key))
      throw new InputError(key, raw[key], `only ${Object.keys(quantities).join(', ')}`);
  const values: Record<string, unknown> = {};
  for (const [key, quantity] of Object.entries(quantities)) {
    const given = Object.hasOwn(raw, key) ? raw[key] : undefined;
    if (given === undefined && (quantity.optional || quantity.fallback !== undefined)) {
      if (quantity.fallback !== undefined) values[key] = quantity.fallback;
      continue;
    }
    const value = quantity.read(given);
    if (value === undefined) throw new InputError(key, given, quantity.accepts);
    values[key] = value;
  }
  return values as ValuesOf<G>;
}
