import { tidied } from './tidy.js';

/** A unit: what it measures, and how many of the measure's own unit it is. */
export interface Unit {
  readonly measure: string;
  readonly size: number;
  /** As it is printed, and in words. */
  readonly label: string;
  readonly words: string;
}

type Row = readonly [measure: string, size: number, label: string, words: string, others?: string];

/** Of two ways to read a word the first measure is taken, unless another is asked for. */
const ROWS: readonly Row[] = [
  ['length', 1, 'mm', 'millimetres', 'mms millimetre millimeter millimeters milimetre milimetres'],
  ['length', 25.4, 'in', 'inches', 'ins inch "'],
  ['length', 10, 'cm', 'centimetres', 'cms centimetre centimeter centimeters'],
  ['length', 1000, 'm', 'metres', 'metre meter meters'],
  ['length', 0.001, 'µm', 'micrometres', 'um micron microns'],
  ['length', 0.0254, 'thou', 'thousandths of an inch', 'thous thousandth thousandths'],
  ['length', 304.8, 'ft', 'feet', 'foot'],
  ['time', 1, 's', 'seconds', 'sec secs second'],
  ['time', 60, 'min', 'minutes', 'mins minute'],
  ['time', 3600, 'h', 'hours', 'hr hrs hour'],
  ['time', 86400, 'days', 'days', 'day'],
  ['angle', 1, '°', 'degrees', 'deg degs degree d'],
  ['angle', 180 / Math.PI, 'rad', 'radians', 'rads radian'],
  ['angle', 1 / 60, '′', 'minutes', "' m min mins minute"],
  ['angle', 1 / 3600, '″', 'seconds', '" s sec secs second'],
  ['turn', 1, 'rev', 'revolutions', 'revs revolution turn turns r'],
  ['part', 1, '%', 'per cent', 'percent /cent pc pct'],
  ['mass', 1, 'g', 'grams', 'gram grammes gramme'],
  ['mass', 1000, 'kg', 'kilograms', 'kilo kilos kilogram'],
  ['frequency', 1, 'hz', 'hertz'],
];
/** Units that an answer may be meant in when it names none. */
const ASKED = new Set(['mm', 'in', 's', 'min', '°', 'rad', 'm/min', 'ft/min']);
const SHORT: ReadonlyMap<string, string> = new Map(
  Object.entries({
    rpm: 'rev/min',
    rps: 'rev/s',
    fpm: 'ft/min',
    sfm: 'ft/min',
    mpm: 'm/min',
    tpi: 'teeth/inch',
    'teeth/in': 'teeth/inch',
    'threads/inch': 'teeth/inch',
    mm2: 'mm^2',
    sqmm: 'mm^2',
  }),
);

const plainly = (label: string): string => (tidied(label) ?? label).replaceAll(' per ', '/');

const named = new Map<string, Unit[]>();
for (const [measure, size, label, words, others = ''] of ROWS) {
  const unit = { measure, size, label, words };
  for (const name of new Set([plainly(label), words, ...others.split(' ')]))
    named.set(name, [...(named.get(name) ?? []), unit]);
}

const asked = new Map<string, Unit>();

/** The unit that an answer is asked in; one that is not known here is only itself. */
export function unitAsked(label: string): Unit {
  const known = asked.get(label);
  if (known) return known;
  const angle = label === '′' || label === '″' ? 'angle' : undefined;
  const text = plainly(label);
  const unit = unitOf(text, angle) ?? { measure: text, size: 1, label, words: label };
  asked.set(label, unit);
  return unit;
}

/**
 * The unit of a text: `mm`, `"`, `rev/min`, `feet/minute`.
 *
 * @param measure the one that is asked for, which decides whether `"` is inches or seconds
 */
export function unitOf(text: string, measure?: string): Unit | undefined {
  const name = SHORT.get(text) ?? text;
  if (measure === name) return { measure, size: 1, label: name, words: name };
  const plain = named.get(name);
  if (plain) return plain.find((unit) => unit.measure === measure) ?? plain[0];
  const [over = '', under = '', ...more] = name.split('/');
  if (under === '' || over === '' || more.length > 0) return undefined;
  const [top, bottom] = [named.get(over)?.[0], named.get(under)?.[0]];
  if (!top || !bottom) return undefined;
  const label = `${top.label}/${bottom.label}`;
  return {
    measure: `${top.measure}/${bottom.measure}`,
    size: top.size / bottom.size,
    label,
    words: `${top.words} per ${bottom.words.replace(/s$/, '')}`,
  };
}

/** Other units of the measure that a sheet may ask in. */
export function otherUnits({ measure, label }: Unit): Unit[] {
  return [...ASKED]
    .flatMap((name) => unitOf(plainly(name), measure) ?? [])
    .filter((unit) => unit.measure === measure && unit.label !== label);
}
