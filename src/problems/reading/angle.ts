import { numeralsOf } from './numeral.js';
import { quantitiesOf, type Reading } from './quantity.js';
import { inFigures } from './spelt.js';
import { conclusion } from './tidy.js';
import { type Token, tokensOf } from './tokens.js';
import { unitOf } from './units.js';

const SIZES = [1, 1 / 60, 1 / 3600] as const;
/** Signs and words between degrees, minutes and seconds that tell nothing. */
const BETWEEN = new Set(['-', ':', ',', '.', 'and', 'about', 'approx', '=']);

/**
 * The ways to read an answer that is an angle: `6.43`, `6.43°`, `6° 25′ 43″`, `6d26m`, `386′`, and `6 26` where minutes
 * are asked for.
 *
 * @param text tidied
 * @returns degrees; none when it cannot be read, or minutes or seconds are 60 or more
 */
export function anglesOf(text: string, inMinutes: boolean): Reading[] {
  const plain = quantitiesOf(text, '°');
  if (plain.length > 0) return plain.map((one) => (inDecimals(one) ? { ...one, decimal: true } : one));
  const tokens = inFigures(tokensOf(conclusion(text)));
  const sign = tokens[0]?.text === '-' || tokens[0]?.text === 'minus' ? -1 : 1;
  const parts = partsOf(tokens.slice(sign === -1 ? 1 : 0).filter(({ text: one }) => !BETWEEN.has(one)));
  const marked = parts?.some(({ place }) => place !== undefined);
  if (!parts || !(marked || inMinutes)) return [];
  let value = 0;
  let half = 0;
  let due = 0;
  for (const [at, { number, place = due }] of parts.entries()) {
    const [numeral, other] = numeralsOf(number);
    const size = SIZES[place];
    const last = at === parts.length - 1;
    const whole = /^\d+$/.test(number);
    if (!numeral || other || size === undefined || place < due) return [];
    if ((!last && !whole) || (at > 0 && numeral.value >= 60)) return [];
    value += numeral.value * size;
    half = numeral.half * size;
    due = place + 1;
  }
  return [{ value: sign * value, own: sign * value, half, ambiguous: false }];
}

const inDecimals = ({ own, unit }: Reading): boolean =>
  !Number.isInteger(own) && (unit === undefined || unit.label === '°');

/** Numbers, each with the place of its mark: 0 degrees, 1 minutes, 2 seconds. */
function partsOf(tokens: readonly Token[]): { number: string; place?: number }[] | undefined {
  const parts: { number: string; place?: number }[] = [];
  for (const { kind, text } of tokens) {
    const part = parts.at(-1);
    if (kind === 'number') parts.push({ number: text });
    else {
      const unit = unitOf(text, 'angle');
      const place = SIZES.findIndex((size) => size === unit?.size);
      if (!part || part.place !== undefined || unit?.measure !== 'angle' || place < 0) return undefined;
      part.place = place;
    }
  }
  return parts.length > 1 ? parts : undefined;
}
