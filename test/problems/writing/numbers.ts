import type { ExpectedNumber } from '../../../src/problems/expected.js';
import { angleWays, inMinutes } from './angles.js';
import { decimalWays, ruleWays, spelt } from './decimals.js';
import { plain } from './plain.js';

const MM = 25.4;
/** Other names of the units that sheets ask in. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  mm: ['MM', 'millimetres', 'millimeters', 'mms.'],
  in: ['"', '″', '”', 'ins', 'inch', 'inches'],
  s: ['sec', 'secs', 'seconds'],
  min: ['mins', 'minutes'],
  '°': ['deg', 'degrees', 'º'],
  'rev/min': ['rpm', 'revs per minute', 'r/min'],
  'm/min': ['metres per minute', 'm / min'],
  'ft/min': ['fpm', 'feet per minute'],
  '%': ['per cent', 'percent'],
  '': ['teeth', 'of them'],
};

/** A number as it is printed: `-3.50 mm`, `line 4`. */
function printedNumber(text: string) {
  const found = /^(?<lead>line )?(?<figures>-?\d+(?:\.\d+)?) ?(?<unit>.*)$/.exec(text)?.groups;
  if (!found) throw new Error(`${text} is no number`);
  const { lead = '', figures = '', unit = '' } = found;
  return { lead, figures, unit };
}

/** Ways to write a number that is printed, with its unit or without; all say the same as the print. */
export function numberWays(printed: string, expects: ExpectedNumber): string[] {
  const text = plain(printed);
  if (expects.angle) return angleWays(text, expects.angle);
  const { lead, figures, unit } = printedNumber(text);
  const whole = expects.unit === '' && /^\d+$/.test(figures);
  const bare = [
    ...decimalWays(figures),
    ...(unit === 'in' ? ruleWays(figures) : []),
    ...(whole ? spelt(figures) : []),
  ];
  const names = lead === '' && (unit !== '' || whole) ? [unit, ...(NAMES[unit] ?? [])] : [''];
  return [
    ...bare,
    // Each name of the unit beside some of the ways, so that each way has one.
    ...bare.map((one, at) => beside(one, names[at % names.length] ?? '', at % 2 === 0)),
    ...(lead === '' ? [`x = ${figures} ${unit}`, `about ${figures} ${unit}`, `(${figures}) ${unit}`] : []),
    `the answer is ${lead}${figures} ${unit}.`,
    ...inOtherUnits(Number(figures), unit, expects.step),
    ...(unit === '°' ? inMinutes(Number(figures)) : []),
  ];
}

/** A few of them, for what has many. */
export function someNumberWays(printed: string, expects: ExpectedNumber): string[] {
  const text = plain(printed);
  if (expects.angle) return angleWays(text, expects.angle).slice(-4);
  const { figures, unit } = printedNumber(text);
  // A count that is none is printed with some of its decimals: a nought behind them would say that it ends there.
  const cutShort = expects.step === 0;
  return [
    figures,
    figures.replace('.', ','),
    figures.includes('.') ? `${figures}${cutShort ? '' : '0'}` : `${figures}.0`,
    beside(figures.replace('.', ','), unit, true),
    `about ${figures} ${NAMES[unit]?.at(-1) ?? unit}`,
    ...inOtherUnits(Number(figures), unit, expects.step).slice(-1),
  ];
}

/** Signs and short names may stand close to the number. */
const beside = (number: string, unit: string, close: boolean): string =>
  close && !/^[a-z]{4}/i.test(unit) && !/[a-z]$/.test(number) ? number + unit : `${number} ${unit}`;

/** A length in the other system, and in parts of its own, where it comes back to what it was. */
function inOtherUnits(size: number, unit: string, step: number): string[] {
  if (unit !== 'mm' && unit !== 'in') return [];
  const [factor, other, most] = unit === 'mm' ? [1 / MM, 'in', 6] : [MM, 'mm', 4];
  const ways = unit === 'mm' ? [`${exact(size / 10)} cm`] : [`${exact(size * 1000)} thou`];
  for (let places = 1; places <= most; places++) {
    const rounded = (size * factor).toFixed(places);
    // Rounding may not move it by as much as half of what it is rounded to when it is judged.
    if (Math.abs(Number(rounded) / factor - size) < 0.45 * step)
      ways.push(
        `${rounded} ${other}`,
        `${rounded.replace('.', ',')}${other}`,
        ...(other === 'in' ? [`${rounded}"`] : []),
      );
  }
  return ways;
}

const exact = (value: number): string => String(Number(value.toPrecision(10)));
