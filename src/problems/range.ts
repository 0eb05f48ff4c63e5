import type { UnitSystem } from '../units/format.js';
import { parseLength } from '../units/length.js';

/** The values that one quantity may take, by the sheet's units; lengths mm. */
export interface Range extends Readonly<Record<UnitSystem, readonly (number | string)[]>> {
  /** Whether they were written as lengths. */
  readonly lengths: boolean;
}

/** More steps than this in a range are a mistake. */
const MOST = 2000;
/** Longest text of one, in characters. */
const LONGEST = 400;
const ENDS = /^(?<from>\S+)\s*\.\.\s*(?<to>\S+)(?:\s+by\s+(?<step>\S+))?$/;

/**
 * Reads what a value may be: `48..96 by 4`, `0.3..1.0 by 0.05 mm`, `[6, 7, 8]`, `[1/2, 3/4] in`, one value, words,
 * or one such for millimetre sheets and one for inch sheets: `16..32 by 2 mm or [5/8, 3/4] in`.
 *
 * @returns lengths mm; undefined when it cannot be read, is empty, has more than 2000 values or 400 characters
 */
export function parseRange(written: unknown): Range | undefined {
  const raw = typeof written === 'string' ? hardened(written) : written;
  if ((typeof raw === 'string' && raw.length > LONGEST) || (Array.isArray(raw) && raw.length > MOST))
    return undefined;
  if (Array.isArray(raw))
    return both(
      listed(raw.map(String), ''),
      raw.every((one) => isLength(String(one))),
    );
  if (typeof raw === 'number') return both([raw], false);
  if (typeof raw !== 'string') return undefined;
  const [first, second, ...more] = raw.split(/\s+or\s+/).map(parseOne);
  if (!first || more.length > 0) return undefined;
  if (raw.includes(' or ') && !second) return undefined;
  const lengths = isLength(raw);
  return second ? { mm: first, inch: second, lengths } : both(first, lengths);
}

/** A list with its unit after it, `[0.5, 0.6] mm`, which YAML by itself cannot read as one value. */
const LIST_WITH_UNIT = /(?<=[:,{]\s*|\bor\s+)\[[^[\]\n]*\](?=\s*(?:mm|in)\b)/g;
const HARD = '[],';
const SOFT = '\u27E6\u27E7\u201A';

/** YAML text in which each list with a unit reads as text; every character keeps its place. */
export function softenLists(yaml: string): string {
  return yaml.replace(LIST_WITH_UNIT, (list) =>
    list.replace(/[[\],]/g, (mark) => SOFT[HARD.indexOf(mark)] ?? mark),
  );
}

const hardened = (text: string) =>
  text.replace(/[\u27E6\u27E7\u201A]/g, (mark) => HARD[SOFT.indexOf(mark)] ?? mark);

const isLength = (text: string) => /(?:\d\s*|\]\s*)(?:mm|in|")$/.test(text.trim());

const both = (values: readonly (number | string)[] | undefined, lengths: boolean): Range | undefined =>
  values && values.length > 0 ? { mm: values, inch: values, lengths } : undefined;

function parseOne(text: string): (number | string)[] | undefined {
  const found = /^(?<values>.*?)\s*(?<unit>mm|in)?$/.exec(text.trim())?.groups;
  const { values = '', unit = '' } = found ?? {};
  const list = /^\[(.*)\]$/.exec(values.trim())?.[1];
  if (list !== undefined)
    return listed(
      list.split(',').map((one) => one.trim()),
      unit,
    );
  const ends = ENDS.exec(values.trim())?.groups;
  if (!ends) return values ? listed([values.trim()], unit) : undefined;
  const [from, to, step] = [ends.from, ends.to, ends.step ?? '1'].map((end = '') => measured(end, unit));
  return typeof from === 'number' && typeof to === 'number' && typeof step === 'number'
    ? steps(from, to, step)
    : undefined;
}

function listed(texts: readonly string[], unit: string): (number | string)[] | undefined {
  const values = texts.map((text) => measured(text, unit));
  return values.every((value) => value !== undefined) ? (values as (number | string)[]) : undefined;
}

/** A number, or a length in mm, or else a word as it stands. */
function measured(text: string, unit: string): number | string | undefined {
  if (unit !== '') return parseLength(`${text} ${unit}`);
  const length = /(?:mm|in|")$/.test(text) ? parseLength(text) : undefined;
  if (length !== undefined) return length;
  if (/^[+-]?(?:\d+(?:\.\d+)?|\.\d+)$/.test(text)) return finite(Number(text));
  return /^[A-Za-z][\w -]*$/.test(text) ? text : undefined;
}

const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);

function steps(from: number, to: number, step: number): number[] | undefined {
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  if (!(step > 0) || !(count >= 1) || count > MOST) return undefined;
  // Counted from the start, and cleared of binary dust, so that 0.3 by 0.05 gives 0.45 and not 0.44999….
  return Array.from({ length: count }, (_, i) => Number((from + i * step).toPrecision(12)));
}
