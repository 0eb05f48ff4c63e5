import { type Fraction, greatestCommonDivisor } from '../fractions.js';

/** Drivers and driven wheels, as many of one as of the other; their ratio is drivers over driven. */
export interface GearTrain {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
}

/** A set of change gears, made ready to be asked for ratios. */
export interface GearSet {
  /** The simplest train of a ratio above 0: two wheels before four, then fewest teeth in all; nothing when there is none. */
  trainFor(ratio: Fraction): GearTrain | undefined;
}

type Pair = readonly [number, number];

/**
 * Makes a set ready: costs as much as the pairs in it, then each ratio is looked for once.
 * Whether an arm reaches from stud to stud is not considered; idlers bridge a gap.
 *
 * @param gears teeth of each wheel owned; a wheel owned twice is listed twice and may be used twice
 */
export function prepareGears(gears: readonly number[]): GearSet {
  const owned = new Map<number, number>();
  for (const teeth of gears) owned.set(teeth, (owned.get(teeth) ?? 0) + 1);
  const teeth = [...owned.keys()].sort((a, b) => a - b);
  const pairs: Pair[] = [];
  teeth.forEach((larger, i) => {
    for (const smaller of teeth.slice(0, i)) pairs.push([larger, smaller]);
    if ((owned.get(larger) ?? 0) > 1) pairs.push([larger, larger]);
  });
  const byProduct = new Map<number, Pair[]>();
  for (const pair of pairs) addTo(byProduct, pair[0] * pair[1], pair);
  // Each product under every number that goes into it, so that a ratio no train has is turned away at a look.
  const multiplesOf = new Map<number, number[]>();
  for (const product of byProduct.keys())
    for (const divisor of divisorsOf(product)) addTo(multiplesOf, divisor, product);

  const has = (wheels: readonly number[]): boolean =>
    wheels.every((one) => wheels.filter((other) => other === one).length <= (owned.get(one) ?? 0));

  function simple({ numerator, denominator }: Fraction): GearTrain | undefined {
    for (const last of teeth) {
      if (last % denominator !== 0) continue;
      const first = (last / denominator) * numerator;
      if (has([first, last])) return { drivers: [first], driven: [last] };
    }
    return undefined;
  }

  function compound({ numerator, denominator }: Fraction): GearTrain | undefined {
    let best: { drivers: Pair; driven: Pair } | undefined;
    if (!multiplesOf.has(denominator)) return undefined;
    for (const product of multiplesOf.get(numerator) ?? [])
      for (const driven of byProduct.get((product / numerator) * denominator) ?? [])
        for (const drivers of byProduct.get(product) ?? []) {
          const train = { drivers, driven };
          if (best && fewerTeeth(best, train) <= 0) continue;
          if (has([...drivers, ...driven])) best = train;
        }
    return best;
  }

  const known = new Map<number, GearTrain | null>();
  return {
    trainFor(ratio) {
      if (ratio.numerator > MOST || ratio.denominator > MOST) return undefined;
      const key = ratio.numerator * 2 * MOST + ratio.denominator;
      let train = known.get(key);
      if (train === undefined) {
        train = simple(ratio) ?? compound(ratio) ?? null;
        known.set(key, train);
      }
      return train ?? undefined;
    },
  };
}

function addTo<T>(lists: Map<number, T[]>, key: number, one: T): void {
  const list = lists.get(key);
  if (list) list.push(one);
  else lists.set(key, [one]);
}

function divisorsOf(product: number): Set<number> {
  const divisors = new Set<number>();
  for (let low = 1; low * low <= product; low++)
    if (product % low === 0) divisors.add(low).add(product / low);
  return divisors;
}

/** No product of two wheels is so large, so no ratio in lowest terms needs a larger part. */
const MOST = 1_000_000;

/** Which of two trains has fewer teeth in all; then the smaller largest wheel, then the smaller first driver. */
function fewerTeeth(a: GearTrain, b: GearTrain): number {
  const [x, y] = [wheelsOf(a), wheelsOf(b)];
  return sum(x) - sum(y) || Math.max(...x) - Math.max(...y) || (a.drivers[0] ?? 0) - (b.drivers[0] ?? 0);
}

/** Every wheel of a train. */
export const wheelsOf = ({ drivers, driven }: GearTrain): number[] => [...drivers, ...driven];

const sum = (teeth: readonly number[]): number => teeth.reduce((total, one) => total + one, 0);

/** Teeth of a train in all. */
export const teethOf = (train: GearTrain): number => sum(wheelsOf(train));

/** A train's ratio, in lowest terms. */
export function ratioOf({ drivers, driven }: GearTrain): Fraction {
  const product = (wheels: readonly number[]) => wheels.reduce((total, one) => total * one, 1);
  const [top, bottom] = [product(drivers), product(driven)];
  const common = greatestCommonDivisor(top, bottom);
  return { numerator: top / common, denominator: bottom / common };
}
