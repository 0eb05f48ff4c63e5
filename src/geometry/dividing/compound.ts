import { type Fraction, greatestCommonDivisor } from '../fractions.js';
import { BestFew } from './best-few.js';

/**
 * Two moves on two circles of one plate, in normal form: whole turns and less than a turn forward on circle 1, then
 * less than a turn forward or back on circle 2, neither move nought. When both go forward circle 1 is the smaller,
 * since their order does not matter. So no setting has two forms.
 */
export interface CompoundSetting {
  /** Which plate of those given, from 1. */
  readonly plate: number;
  readonly turns: number;
  readonly holes1: number;
  readonly circle1: number;
  readonly sense: 'forward' | 'back';
  readonly holes2: number;
  readonly circle2: number;
}

/** Fewest turns first, then fewest spaces to count, then both moves forward; then by plate and circles. */
export function simplestCompound(a: CompoundSetting, b: CompoundSetting): number {
  return (
    a.turns - b.turns ||
    a.holes1 + a.holes2 - (b.holes1 + b.holes2) ||
    Number(a.sense === 'back') - Number(b.sense === 'back') ||
    a.plate - b.plate ||
    a.circle1 - b.circle1 ||
    a.circle2 - b.circle2 ||
    a.holes1 - b.holes1
  );
}

/**
 * Every pair of moves on one plate that comes exactly to a fraction of a turn of the crank, the simplest first.
 *
 * To move several divisions at a time makes no further count possible: it leaves the factors that the circles must
 * supply as they are, so it is not looked for.
 *
 * @param turn ratio/divisions in lowest terms, above 0
 * @param plates each a list of its circles
 * @param most how many settings to keep; the count is of them all
 */
export function compoundSettings(
  turn: Fraction,
  plates: readonly (readonly number[])[],
  most = Number.POSITIVE_INFINITY,
): { readonly count: number; readonly settings: readonly CompoundSetting[] } {
  const found = new BestFew(most, simplestCompound);
  plates.forEach((circles, place) => {
    const rising = [...new Set(circles)].sort((a, b) => a - b);
    rising.forEach((smaller, i) => {
      for (const larger of rising.slice(i + 1)) addPair(turn, place + 1, smaller, larger, found);
    });
  });
  return { count: found.count, settings: found.few };
}

/** Every setting on one pair of circles. */
function addPair(
  { numerator, denominator }: Fraction,
  plate: number,
  smaller: number,
  larger: number,
  found: BestFew<CompoundSetting>,
): void {
  const common = greatestCommonDivisor(smaller, larger);
  // In parts of the least turn that both circles can measure, a space of the smaller is u, of the larger v; u, v coprime.
  const [u, v] = [larger / common, smaller / common];
  const full = smaller * u;
  if (full % denominator !== 0) return;
  const wanted = numerator * (full / denominator);
  const first = (inverseModulo(u, v) * (wanted % v)) % v;
  for (let a = first; a < smaller; a += v) {
    const b = modulo((wanted - u * a) / v, larger);
    if (a === 0 || b === 0) continue;
    const turns = (wanted - u * a - v * b) / full;
    const pins = { plate, circle1: smaller, circle2: larger };
    if (turns >= 0) found.add({ ...pins, turns, holes1: a, sense: 'forward', holes2: b });
    // The same holes reached the other way round on one circle: a turn more, and that move back.
    found.add({ ...pins, turns: turns + 1, holes1: a, sense: 'back', holes2: larger - b });
    found.add({
      plate,
      circle1: larger,
      circle2: smaller,
      turns: turns + 1,
      holes1: b,
      sense: 'back',
      holes2: smaller - a,
    });
  }
}

const modulo = (value: number, by: number): number => ((value % by) + by) % by;

/** The number that times `value` leaves 1 when divided by `by`; the two coprime. */
function inverseModulo(value: number, by: number): number {
  let [r0, r1, s0, s1] = [modulo(value, by), by, 1, 0];
  while (r1 !== 0) {
    const q = Math.floor(r0 / r1);
    [r0, r1, s0, s1] = [r1, r0 - q * r1, s1, s0 - q * s1];
  }
  return modulo(s0, by);
}
