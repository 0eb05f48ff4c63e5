/** Lead screw and pitch as they are told: mm, or threads to the inch, each as a numerator and a denominator. */
export interface Told {
  readonly numerator: number;
  readonly denominator: number;
  readonly perInch: boolean;
}

/** Drivers over driven in lowest terms. */
export interface Ratio {
  readonly top: number;
  readonly bottom: number;
}

/** What trying every choice of wheels comes to. */
export interface Trial {
  readonly count: number;
  /** The best of them, as keys. */
  readonly best: readonly TrainKey[];
  /** Error nearest to nought of any train, within the tolerance or not, parts per million, its sign dropped. */
  readonly least: number;
}

/** A train as far as its place in a list goes: error without its sign, wheels, teeth in all. */
export type TrainKey = readonly [error: number, wheels: number, teeth: number];

/** Drivers over driven for a pitch on a lead screw: lengths of one turn in units of 1/127 inch, one over the other. */
export function ratioOfTurns(cut: Told, lead: Told): Ratio {
  const turn = ({ numerator, denominator, perInch }: Told): [bigint, bigint] =>
    perInch ? [127n * BigInt(denominator), BigInt(numerator)] : [5n * BigInt(numerator), BigInt(denominator)];
  const [a, b] = turn(cut);
  const [c, d] = turn(lead);
  let [x, y] = [a * d, b * c];
  while (y !== 0n) [x, y] = [y, x % y];
  return { top: Number((a * d) / x), bottom: Number((b * c) / x) };
}

/** Error of a train of such drivers and driven, multiplied out, parts per million. */
const errorOf = ({ top, bottom }: Ratio, drivers: number, driven: number): number =>
  ((drivers * bottom - driven * top) / (driven * top)) * 1e6;

/** A train put back: its pitch against the pitch wanted. */
export function putBack(ratio: Ratio, drivers: readonly number[], driven: readonly number[]): TrainKey {
  const [a, b] = [drivers, driven].map((wheels) => wheels.reduce((so, wheel) => so * wheel)) as [
    number,
    number,
  ];
  const teeth = [...drivers, ...driven].reduce((so, wheel) => so + wheel);
  return [Math.abs(errorOf(ratio, a, b)), drivers.length + driven.length, teeth];
}

/**
 * Every two and every four wheels of the set taken in hand, and shared out between drivers and driven in every way.
 *
 * @param tolerance parts per million
 * @param most longest list
 */
export function everyTrain(ratio: Ratio, wheels: readonly number[], tolerance: number, most: number): Trial {
  const errors: number[] = [];
  const sizes: number[] = [];
  let least = Infinity;
  const top = ratio.top;
  const bottom = ratio.bottom;
  const tryOne = (drivers: number, driven: number, size: number): void => {
    const right = driven * top;
    const over = Math.abs(drivers * bottom - right);
    // The least error needs no exactness; whether a train is within the tolerance does, and gets it.
    if (over < least * right) least = over / right;
    if (over * 1e6 > tolerance * right) return;
    errors.push((over / right) * 1e6);
    sizes.push(size);
  };
  twos(wheels, (a, b) => {
    tryOne(a, b, 2e6 + a + b);
    if (a !== b) tryOne(b, a, 2e6 + a + b);
  });
  fours(wheels, (a, b, c, d) => {
    const size = 4e6 + a + b + c + d;
    tryOne(a * b, c * d, size);
    if (b !== c) tryOne(a * c, b * d, size);
    if (c !== d) tryOne(a * d, b * c, size);
    if (a !== b) tryOne(b * c, a * d, size);
    if (a !== b && c !== d) tryOne(b * d, a * c, size);
    if (b !== c) tryOne(c * d, a * b, size);
  });
  const limit = Float64Array.from(errors).sort()[most - 1] ?? Infinity;
  const best = errors
    .flatMap((error, i): TrainKey[] => {
      const size = sizes[i] ?? 0;
      return error <= limit ? [[error, Math.floor(size / 1e6), size % 1e6]] : [];
    })
    .sort((one, two) => one[0] - two[0] || one[1] - two[1] || one[2] - two[2]);
  return { count: errors.length, best: best.slice(0, most), least: least * 1e6 };
}

/** Every choice of two wheels, smaller first; alike choices once. */
function twos(wheels: readonly number[], visit: (a: number, b: number) => void): void {
  const set = [...wheels].sort((a, b) => a - b);
  for (let i = 0; i < set.length; i = past(set, i))
    for (let j = i + 1; j < set.length; j = past(set, j)) visit(set[i] ?? 0, set[j] ?? 0);
}

/** Every choice of four wheels, smallest first; alike choices once. */
function fours(wheels: readonly number[], visit: (a: number, b: number, c: number, d: number) => void): void {
  const set = [...wheels].sort((a, b) => a - b);
  const next = set.map((_, i) => past(set, i));
  const step = (i: number): number => next[i] ?? set.length;
  for (let i = 0; i < set.length; i = step(i))
    for (let j = i + 1; j < set.length; j = step(j))
      for (let k = j + 1; k < set.length; k = step(k))
        for (let l = k + 1; l < set.length; l = step(l))
          visit(set[i] ?? 0, set[j] ?? 0, set[k] ?? 0, set[l] ?? 0);
}

/** The place of the next wheel that is not like this one. */
function past(set: readonly number[], from: number): number {
  let place = from + 1;
  while (place < set.length && set[place] === set[from]) place++;
  return place;
}
