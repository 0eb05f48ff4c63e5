import { associationScrew } from '../../geometry/screws/british-association.js';
import { type Series, tabled } from '../../handbook/screws/thread-table.js';
import { parseFraction } from '../../units/fraction.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Quantity } from '../quantity.js';

/** A thread by its size, mm. */
export interface SizedThread {
  readonly name: string;
  readonly diameter: number;
  readonly pitch: number;
}

/** What a size of each series looks like. */
export const sizesOf: Readonly<Record<Series, string>> = {
  iso: 'a size from M1 to M64, such as M6 or M6x0.75 where the pitch is fine',
  whitworth: 'a size from 1/16 to 2 in with its series, such as 1/4 BSW, 1/4 BSF or 1/4 BSB',
  ba: 'a number from 0 to 16, such as 2 BA',
  me: 'a size from 1/8 to 1/2 in with its threads per inch, such as 3/16x40 or 3/8x32',
};

const LOOKS = /^[A-Z0-9 ./-]{1,24}$/;

/** The size of a thread as people write it; kept in capitals, with X for a times sign. */
export const size: Quantity<string> = {
  name: 'size of the thread',
  unit: '',
  accepts: 'a size such as M6, M6x0.75, 1/4 BSW, 1/4 BSF, 2 BA or 3/16x40',
  read: (raw) => {
    if (typeof raw === 'number' && Number.isInteger(raw) && raw >= 0 && raw <= 99) return String(raw);
    if (typeof raw !== 'string' || raw.length > 40) return undefined;
    const text = raw
      .toUpperCase()
      .replaceAll('×', 'X')
      .replace(/["″]|\bIN\b/g, ' ')
      .replace(/\s+/g, ' ')
      .trim();
    return LOOKS.test(text) && /\d/.test(text) ? text : undefined;
  },
};

const FRACTION = String.raw`(?<inches>(?:\d+[ -])?\d+/\d+|\d+)`;
const PATTERNS: Readonly<Record<Series, RegExp>> = {
  iso: /^M ?(?<diameter>\d+(?:\.\d+)?)(?: ?X ?(?<pitch>\d*\.?\d+))?$/,
  whitworth: new RegExp(`^${FRACTION} ?(?<kind>BSW|BSF|BSB)?$`),
  ba: /^(?<number>\d{1,2}) ?(?:BA)?$/,
  me: new RegExp(`^${FRACTION} ?(?:X ?|ME ?|-)(?<tpi>\\d+)(?: ?(?:TPI|ME|TPI ME))?$`),
};

/**
 * Reads a size: what the text says is taken from the text, the pitch of a series from its table, and a BA screw from
 * the rule of its series.
 *
 * @returns undefined when the series has no such size
 */
export function threadOfSize(series: Series, text: string): SizedThread | undefined {
  const { diameter, pitch, inches, kind = 'BSW', number, tpi } = PATTERNS[series].exec(text)?.groups ?? {};
  if (number !== undefined) {
    const name = `${Number(number)} BA`;
    return tabled('ba', name) && { name, ...associationScrew(Number(number)) };
  }
  if (diameter !== undefined)
    return metric(Number(diameter), pitch === undefined ? undefined : Number(pitch));
  const told = inches === undefined ? undefined : parseFraction(inches.replace('-', ' '));
  if (!told || told.denominator === 0) return undefined;
  const across = MM_PER_INCH * (told.numerator / told.denominator);
  const plain = inches?.replace('-', ' ');
  if (tpi === undefined) return inSeries('whitworth', `${plain} ${kind}`, across);
  return inSeries('me', `${plain} × ${tpi} ME`, across, MM_PER_INCH / Number(tpi));
}

/** A coarse pitch that is told all the same, M6x1, is the coarse thread. */
function metric(diameter: number, pitch: number | undefined): SizedThread | undefined {
  const coarse = inSeries('iso', `M${diameter}`, diameter);
  if (pitch === undefined || pitch === coarse?.pitch) return coarse;
  return inSeries('iso', `M${diameter} × ${pitch}`, diameter, pitch);
}

function inSeries(series: Series, name: string, diameter: number, pitch?: number): SizedThread | undefined {
  const row = tabled(series, name);
  return row && { name, diameter, pitch: pitch ?? row.pitch };
}
