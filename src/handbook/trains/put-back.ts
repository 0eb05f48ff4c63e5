/** What trains must keep to; the tolerance in parts per million. */
export interface TrainLimits {
  readonly ratio: { readonly numerator: number; readonly denominator: number };
  readonly stages: number;
  readonly minLeaves: number;
  readonly maxLeaves: number;
  readonly minTeeth: number;
  readonly maxTeeth: number;
  readonly tolerance: number;
}

/** A train that is to be tried. */
export interface FoundTrain {
  readonly wheels: readonly number[];
  readonly pinions: readonly number[];
  readonly ratio: number;
  readonly error: number;
}

/**
 * How many rows hold good when they are multiplied out: within the limits, the ratio and error as stated, and no row a
 * second time, in whatever order its counts.
 */
export function rowsThatHold(trains: readonly FoundTrain[], limits: TrainLimits): number {
  const seen = new Set<string>();
  const { stages, minLeaves, maxLeaves, minTeeth, maxTeeth, tolerance, ratio } = limits;
  const wanted = ratio.numerator / ratio.denominator;
  return trains.filter((train) => {
    const name = [train.wheels, train.pinions].map((side) => [...side].sort().join()).join('/');
    if (seen.has(name)) return false;
    seen.add(name);
    let turns = 1; // of each arbor in turn
    for (let pair = 0; pair < stages; pair++)
      turns *= (train.wheels[pair] ?? Number.NaN) / (train.pinions[pair] ?? Number.NaN);
    const off = (turns / wanted - 1) * 1e6;
    return (
      train.wheels.length === stages &&
      train.pinions.length === stages &&
      train.wheels.every((teeth) => teeth >= minTeeth && teeth <= maxTeeth) &&
      train.pinions.every((leaves) => leaves >= minLeaves && leaves <= maxLeaves) &&
      Math.abs(turns / train.ratio - 1) < 1e-12 &&
      Math.abs(off - train.error) < 1e-6 &&
      Math.abs(off) <= tolerance + 1e-6
    );
  }).length;
}
