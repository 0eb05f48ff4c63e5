import type { FoundTrain, TrainLimits } from './put-back.js';

/** Sums of teeth are far below this, so that product and sum go into one number and still sort by product. */
const SUMS = 8192;

/**
 * How many trains there are at each total of teeth, by a table: every set of wheels written down with its product, the
 * table sorted, and for every set of pinions the stretch of it taken that makes the ratio.
 */
export function trainsAtEachTotal(limits: TrainLimits): ReadonlyMap<number, number> {
  const { stages, minLeaves, maxLeaves, minTeeth, maxTeeth } = limits;
  const table = Float64Array.from(everySet(stages, minTeeth, maxTeeth)).sort();
  const counts = new Map<number, number>();
  for (const set of everySet(stages, minLeaves, maxLeaves)) {
    const leaves = set % SUMS;
    const side = compareWith(limits, Math.floor(set / SUMS));
    const end = firstWhere(table, (teeth) => side(teeth) > 0);
    for (let i = firstWhere(table, (teeth) => side(teeth) >= 0); i < end; i++) {
      const total = ((table[i] ?? 0) % SUMS) + leaves;
      counts.set(total, (counts.get(total) ?? 0) + 1);
    }
  }
  return counts;
}

/** Every set of so many counts, as product × SUMS + sum, told off as a milometer counts. */
function everySet(size: number, least: number, most: number): number[] {
  const wheels = new Array<number>(size).fill(least);
  const sets: number[] = [];
  for (;;) {
    sets.push(wheels.reduce((a, b) => a * b) * SUMS + wheels.reduce((a, b) => a + b));
    const turning = wheels.findLastIndex((count) => count < most);
    if (turning < 0) return sets;
    wheels.fill((wheels[turning] ?? 0) + 1, turning);
  }
}

/** Whether a product of wheels is too small (below 0), right (0) or too large for pinions that come to so much. */
function compareWith({ ratio, tolerance }: TrainLimits, leaves: number): (teeth: number) => number {
  const wanted = BigInt(ratio.numerator) * BigInt(leaves);
  const low = wanted * (1_000_000n - BigInt(tolerance));
  const high = wanted * (1_000_000n + BigInt(tolerance));
  return (teeth) => {
    const have = BigInt(teeth) * BigInt(ratio.denominator) * 1_000_000n;
    return have < low ? -1 : have > high ? 1 : 0;
  };
}

/** The first place of the table whose product is so, as all after it are; found by halving. */
function firstWhere(table: Float64Array, so: (teeth: number) => boolean): number {
  let [from, to] = [0, table.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (so(Math.floor((table[middle] ?? 0) / SUMS))) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** The totals of the cheapest so many trains: how many of them at each, cheapest first. */
export function cheapestTotals(counts: ReadonlyMap<number, number>, most: number): [number, number][] {
  const rows: [number, number][] = [];
  let left = most;
  for (const [total, count] of [...counts].sort(([a], [b]) => a - b)) {
    if (left <= 0) break;
    rows.push([total, Math.min(count, left)]);
    left -= count;
  }
  return rows;
}

/** The totals of a list of trains, in its order: how many with each. */
export function totalsOf(trains: readonly FoundTrain[]): [number, number][] {
  const rows: [number, number][] = [];
  for (const { wheels, pinions } of trains) {
    const total = [...wheels, ...pinions].reduce((a, b) => a + b, 0);
    const last = rows.at(-1);
    if (last?.[0] === total) last[1]++;
    else rows.push([total, 1]);
  }
  return rows;
}
