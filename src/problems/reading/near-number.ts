import type { ExpectedNumber } from '../expected.js';
import type { Reading } from './quantity.js';
import { takesConverted, takesNumber } from './takes.js';
import { otherUnits, type Unit, unitAsked } from './units.js';
import { near, type Verdict } from './verdict.js';

/** A point is misplaced by one figure, two or three. */
const FACTORS: readonly (readonly [number, string])[] = [
  [10, 'ten times too small'],
  [0.1, 'ten times too large'],
  [100, 'a hundred times too small'],
  [0.01, 'a hundred times too large'],
  [1000, 'a thousand times too small'],
  [0.001, 'a thousand times too large'],
];
/** Nearer than this share, too few figures were carried. */
const CLOSE = 0.01;

/** What is said of a number that is not right, but nearly; undefined when it is not. */
export function nearNumber(reading: Reading, expects: ExpectedNumber): Verdict | undefined {
  const { value, own, half, unit } = reading;
  const asked = unitAsked(expects.unit);
  const isRight = (shown: number): boolean => takesNumber(expects, shown);
  if (unit && unit.label !== asked.label && isRight(own))
    return near(`${own} is right in ${asked.words}, but you wrote ${unit.words}.`);
  if (!Number.isFinite(value)) return undefined;
  const other = unit ? undefined : otherUnits(asked).find((one) => isIn(one, asked, expects, { own, half }));
  if (other) return near(`That is right in ${other.words}; it is asked for in ${asked.words}.`);
  if (isRight(-value)) return near('The figures are right, but the sign is not.');
  if (reading.decimal && expects.angle && isRight(minutesMeant(own)))
    return near(
      'The figures after the point are decimals of a degree. Write minutes with their mark, as 12° 34′.',
    );
  const factor = hasFigures(expects) ? FACTORS.find(([times]) => isRight(value * times)) : undefined;
  if (factor) return near(`The figures are right, but that is ${factor[1]}: mind the point.`);
  if (Math.abs(value - expects.value) > CLOSE * Math.abs(expects.value)) return undefined;
  if (expects.step > 0)
    return near('Very near, but not near enough: carry all the figures, and round at the end.');
  return Number.isInteger(value)
    ? undefined
    : near('Very near, but a count is whole: carry all the figures.');
}

/** Whether a number without a unit is right in one that was not asked for. */
function isIn(
  unit: Unit,
  asked: Unit,
  expects: ExpectedNumber,
  { own, half }: { readonly own: number; readonly half: number },
): boolean {
  const scale = unit.size / asked.size;
  return takesConverted(expects, own * scale, half * scale);
}

/** `6.26` where 6° 26′ was meant. */
function minutesMeant(decimal: number): number {
  const whole = Math.trunc(decimal);
  return whole + ((decimal - whole) * 100) / 60;
}

/** A count of one figure is too easily ten times another. */
const hasFigures = ({ step, value }: ExpectedNumber): boolean => step > 0 || Math.abs(value) >= 10;
