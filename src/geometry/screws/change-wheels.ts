import type { Fraction } from '../fractions.js';
import { type Side, sidesOf, stockOf } from './wheel-sides.js';

/** What a lathe's change wheels must do. */
export interface GearWanted {
  /** Drivers multiplied over driven multiplied; numerator and denominator at most 10 million. */
  readonly ratio: Fraction;
  /** Every wheel there is; one that is there twice may be used twice. */
  readonly wheels: readonly number[];
  /** Largest error, whole parts per million, at most 20 000. */
  readonly tolerance: number;
}

/** A simple train of two wheels or a compound one of four; each side largest first. */
export interface GearTrain {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  /** Error of the pitch, parts per million; above 0 where the pitch comes out too long. */
  readonly error: number;
}

/** A train as it is come upon. */
type Visit = (drivers: Side, driven: Side, error: number) => void;

/** Classes of error that trains are counted in before the best of them are kept. */
const CLASSES = 1000;

/**
 * Every simple and compound train within the tolerance counted, and the best of them: smallest error first, then
 * fewest wheels, then fewest teeth in all, then smallest drivers. None comes twice, in whatever order its wheels are.
 * Whether the wheels clear each other’s studs on the banjo is not looked at.
 *
 * @param most longest list
 */
export function gearTrains(wanted: GearWanted, most: number): { count: number; trains: GearTrain[] } {
  const classOf = (error: number): number =>
    Math.min(CLASSES, Math.floor((CLASSES * Math.abs(error)) / (wanted.tolerance || 1)));
  const tally: number[] = Array(CLASSES + 1).fill(0);
  eachTrain(wanted, (_drivers, _driven, error) => {
    const place = classOf(error);
    tally[place] = (tally[place] ?? 0) + 1;
  });
  let count = 0;
  let last = 0;
  tally.forEach((trains, place) => {
    if (count < most) last = place;
    count += trains;
  });
  const found: (GearTrain & { readonly teeth: number })[] = [];
  eachTrain(wanted, (drivers, driven, error) => {
    if (classOf(error) <= last)
      found.push({
        drivers: drivers.wheels,
        driven: driven.wheels,
        error,
        teeth: drivers.teeth + driven.teeth,
      });
  });
  found.sort(
    (a, b) =>
      Math.abs(a.error) - Math.abs(b.error) ||
      a.drivers.length - b.drivers.length ||
      a.teeth - b.teeth ||
      firstDifference(a.drivers, b.drivers) ||
      firstDifference(a.driven, b.driven),
  );
  return { count, trains: found.slice(0, most).map(({ teeth: _, ...train }) => train) };
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  const place = a.findIndex((count, i) => count !== b[i]);
  return place < 0 ? 0 : (a[place] ?? 0) - (b[place] ?? 0);
}

/** Calls for every train within the tolerance. */
function eachTrain({ ratio, wheels, tolerance }: GearWanted, visit: Visit): void {
  const stock = stockOf(wheels);
  const { numerator, denominator } = ratio;
  for (const sides of sidesOf(stock))
    for (const driven of sides) {
      const right = driven.product * numerator;
      const leeway = right * tolerance;
      // Whole numbers that a double holds exactly wherever the comparison is close.
      const over = (drivers: Side): number => drivers.product * denominator - right;
      for (let i = firstWhere(sides, (side) => over(side) * 1e6 >= -leeway); i < sides.length; i++) {
        const drivers = sides[i] as Side;
        if (over(drivers) * 1e6 > leeway) break;
        if (areOwned(drivers, driven, stock)) visit(drivers, driven, (over(drivers) / right) * 1e6);
      }
    }
}

/** Place of the first in a list for which something holds that holds from there on. */
function firstWhere<T>(list: readonly T[], holds: (item: T) => boolean): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(list[middle] as T)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Whether there are wheels enough for both sides at once. */
function areOwned(drivers: Side, driven: Side, stock: ReadonlyMap<number, number>): boolean {
  return driven.wheels.every((wheel) => {
    const used = (side: Side) => side.wheels.filter((one) => one === wheel).length;
    return !drivers.wheels.includes(wheel) || used(drivers) + used(driven) <= (stock.get(wheel) ?? 0);
  });
}
