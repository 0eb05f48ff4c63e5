import type { Fraction } from '../fractions.js';
import { product } from './ratio.js';
import { eachSet } from './sets.js';

/** What a train must keep to. */
export interface TrainBounds {
  /** Turns of the last pinion for one of the first wheel. */
  readonly ratio: Fraction;
  /** Pairs of a wheel and a pinion. */
  readonly stages: number;
  readonly minLeaves: number;
  readonly maxLeaves: number;
  readonly minTeeth: number;
  readonly maxTeeth: number;
  /** Largest error, whole parts per million. */
  readonly tolerance: number;
}

/** Wheels and pinions, largest first. Which pinion a wheel drives makes no difference to the ratio. */
export interface Train {
  readonly wheels: readonly number[];
  readonly pinions: readonly number[];
  /** Wheels multiplied over pinions multiplied. */
  readonly ratio: number;
  /** Parts per million; above 0 where the train turns faster than it should. */
  readonly error: number;
}

/**
 * Every train within bounds counted, and the cheapest of them: fewest teeth in all first, then the smaller error,
 * then the smaller largest wheel. A train is its wheels and its pinions, in whatever order; none comes twice.
 *
 * @param most longest list
 */
export function findTrains(bounds: TrainBounds, most: number): { count: number; trains: Train[] } {
  const tally: number[] = [];
  eachTrain(bounds, (total) => {
    tally[total] = (tally[total] ?? 0) + 1;
  });
  let count = 0;
  let dearest = -1;
  tally.forEach((trains, total) => {
    if (count < most) dearest = total;
    count += trains;
  });
  const found: { total: number; train: Train }[] = [];
  eachTrain(bounds, (total, wheels, pinions) => {
    if (total <= dearest) found.push({ total, train: trainOf(bounds.ratio, wheels, pinions) });
  });
  found.sort((a, b) => a.total - b.total || cheaper(a.train, b.train));
  return { count, trains: found.slice(0, most).map(({ train }) => train) };
}

/** Calls for every train with its teeth in all; the lists are smallest first, and used again. */
function eachTrain(
  bounds: TrainBounds,
  visit: (total: number, wheels: readonly number[], pinions: readonly number[]) => void,
): void {
  const { stages, minLeaves, maxLeaves, minTeeth, maxTeeth } = bounds;
  const byProduct = new Map<number, { total: number; pinions: readonly number[] }[]>();
  eachSet(stages, [minLeaves, maxLeaves], [1, maxLeaves ** stages], (pinions) => {
    const leaves = product(pinions);
    const alike = byProduct.get(leaves) ?? [];
    byProduct.set(leaves, alike);
    alike.push({ total: sum(pinions), pinions: [...pinions] });
  });
  for (const [leaves, sets] of byProduct) {
    const range = productsWanted(bounds, leaves);
    if (range)
      eachSet(stages, [minTeeth, maxTeeth], range, (wheels) => {
        const teeth = sum(wheels);
        for (const { total, pinions } of sets) visit(teeth + total, wheels, pinions);
      });
  }
}

const sum = (counts: readonly number[]): number => counts.reduce((so, count) => so + count, 0);

const MILLION = 1_000_000n;

/** What the wheels may come to when multiplied, for pinions that come to so much; nothing when no wheels can. */
function productsWanted(
  { ratio, stages, minTeeth, maxTeeth, tolerance }: TrainBounds,
  leaves: number,
): readonly [number, number] | undefined {
  const right = BigInt(ratio.numerator) * BigInt(leaves);
  const parts = BigInt(ratio.denominator) * MILLION;
  const least = (right * (MILLION - BigInt(tolerance)) + parts - 1n) / parts;
  const most = (right * (MILLION + BigInt(tolerance))) / parts;
  const reach = [minTeeth ** stages, maxTeeth ** stages] as const;
  if (least > most || least > BigInt(reach[1]) || most < BigInt(reach[0])) return undefined;
  return [Math.max(Number(least), reach[0]), most > BigInt(reach[1]) ? reach[1] : Number(most)];
}

function trainOf(ratio: Fraction, wheels: readonly number[], pinions: readonly number[]): Train {
  const [teeth, leaves] = [product(wheels), product(pinions)];
  const wanted = BigInt(ratio.numerator) * BigInt(leaves);
  const over = BigInt(teeth) * BigInt(ratio.denominator) - wanted;
  return {
    wheels: [...wheels].reverse(),
    pinions: [...pinions].reverse(),
    ratio: teeth / leaves,
    error: Number(over * MILLION) / Number(wanted),
  };
}

/** The order of trains with as many teeth in all. */
function cheaper(a: Train, b: Train): number {
  return (
    Math.abs(a.error) - Math.abs(b.error) ||
    firstDifference(a.wheels, b.wheels) ||
    firstDifference(a.pinions, b.pinions)
  );
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  const place = a.findIndex((count, i) => count !== b[i]);
  return place < 0 ? 0 : (a[place] ?? 0) - (b[place] ?? 0);
}
