/** The count, among those that can be cut, that makes both sides of a train come to the same; none if no count does. */
export function missingByTrial(
  place: 'wheel' | 'pinion',
  beats: number,
  escapeTeeth: number,
  known: { readonly wheels: readonly number[]; readonly pinions: readonly number[] },
  most: number,
): number | undefined {
  const multiplied = (counts: readonly number[]): bigint =>
    counts.reduce((so, count) => so * BigInt(count), 1n);
  const driving = 2n * BigInt(escapeTeeth) * multiplied(known.wheels);
  const driven = BigInt(beats) * multiplied(known.pinions);
  for (let count = 1; count <= most; count++)
    if (place === 'wheel' ? driving * BigInt(count) === driven : driven * BigInt(count) === driving)
      return count;
  return undefined;
}

interface MotionBounds {
  readonly ratio: number;
  readonly minLeaves: number;
  readonly maxLeaves: number;
  readonly maxTeeth: number;
  readonly equalCentres: boolean;
}

/** Motion works found from the other end: every hour wheel and minute wheel tried, and the pinions fitted to them. */
export function motionWorksByTrial({ ratio, minLeaves, maxLeaves, maxTeeth, equalCentres }: MotionBounds) {
  const rows: [teeth: number, cannon: number, minute: number, pinion: number, hour: number][] = [];
  for (let hour = maxTeeth; hour >= minLeaves; hour--)
    for (let minute = maxTeeth; minute >= minLeaves; minute--)
      for (let pinion = Math.min(hour, maxLeaves); pinion >= minLeaves; pinion--) {
        const cannon = (minute * hour) / (pinion * ratio);
        const fits = Number.isInteger(cannon) && cannon >= minLeaves && cannon <= maxLeaves;
        if (!fits || cannon > minute || (equalCentres && hour - minute !== cannon - pinion)) continue;
        rows.push([cannon + minute + pinion + hour, cannon, minute, pinion, hour]);
      }
  rows.sort((a, b) => a.map((part, i) => part - (b[i] ?? 0)).find((difference) => difference !== 0) ?? 0);
  return rows.map(([, cannonPinion, minuteWheel, minutePinion, hourWheel]) => ({
    cannonPinion,
    minuteWheel,
    minutePinion,
    hourWheel,
  }));
}
