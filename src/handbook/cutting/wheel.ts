import { halfAngleOf, type SpaceSizes } from './space.js';

/** A cutter's setting and the blank, mm; the cuts in degrees anticlockwise from the first. */
export interface Setting {
  readonly cutter: SpaceSizes;
  readonly cuts: readonly number[];
  /** From the axis to the bottom of the cuts. */
  readonly rootRadius: number;
  readonly offset: number;
  readonly blankRadius: number;
  readonly eccentricity: number;
}

type Interval = readonly [from: number, to: number];

const DEGREES = 180 / Math.PI;

/**
 * What a wheel should measure, by arithmetic on its pitch circle and its rim: every cut takes an interval, its ends
 * where the wall of the space crosses the circle; what no cut takes between one space and the next is the tooth.
 */
export function expectedWheel(setting: Setting, teeth: number, pitchRadius: number) {
  const spaces = spacesLeft(setting.cuts, teeth);
  const wall = wallOf(setting);
  const taken = intervalsAt(setting, wall, pitchRadius, 0);
  const rimTaken = intervalsAt(setting, wall, setting.blankRadius, setting.eccentricity);
  const middles = spaces.map((cut) => middleOf(setting, cut, pitchRadius, 0));
  const rimMiddles = spaces.map((cut) => middleOf(setting, cut, setting.blankRadius, setting.eccentricity));
  const rimLeft = leftOver(rimTaken);
  return {
    toothThicknesses: shared(leftOver(taken), middles).map((angle) => (angle / DEGREES) * pitchRadius),
    spaceWidth: (((taken[0]?.[1] ?? 0) - (taken[0]?.[0] ?? 0)) / DEGREES) * pitchRadius,
    lands: shared(rimLeft, rimMiddles).map((angle) => (angle / DEGREES) * setting.blankRadius),
    runOut: swing(rimLeft, setting),
    /** Degrees from each space to the next. */
    gaps: spaces.map((cut, i) => (spaces[i + 1] ?? (spaces[0] ?? 0) + 360) - cut),
  };
}

/** Two cuts closer than this part of a tooth's pitch make one space. */
function spacesLeft(cuts: readonly number[], teeth: number): number[] {
  const near = 360 / teeth / 128;
  const left: number[] = [];
  for (const cut of cuts.map((angle) => ((angle % 360) + 360) % 360).sort((a, b) => a - b))
    if (left.length === 0 || cut - (left.at(-1) ?? 0) >= near) left.push(cut);
  if (left.length > 1 && (left[0] ?? 0) + 360 - (left.at(-1) ?? 0) < near) left.pop();
  return left;
}

/** The right-hand wall of a space by its radius about the point its flanks meet at; the cut stands at the top. */
export function wallOf({ cutter, rootRadius, offset }: Setting) {
  const half = halfAngleOf(cutter);
  const apex = rootRadius - cutter.rootRadius;
  return (radius: number, side: 1 | -1) => ({
    x: side * radius * Math.sin(half(radius)) + offset,
    y: radius * Math.cos(half(radius)) + apex,
  });
}

/** Degrees that each cut takes of a circle whose middle stands above the axis while the first cut is made. */
export function intervalsAt(
  setting: Setting,
  wall: ReturnType<typeof wallOf>,
  radius: number,
  above: number,
): Interval[] {
  const ends = (cut: number): Interval => {
    const centre = { x: above * Math.sin(cut / DEGREES), y: above * Math.cos(cut / DEGREES) };
    const edge = (side: 1 | -1): number => {
      let [low, high] = [setting.cutter.rootRadius, setting.cutter.rootRadius + 3 * radius];
      for (let step = 0; step < 50; step++) {
        const middle = (low + high) / 2;
        const { x, y } = wall(middle, side);
        if (Math.hypot(x - centre.x, y - centre.y) < radius) low = middle;
        else high = middle;
      }
      const { x, y } = wall(low, side);
      return Math.atan2(x - centre.x, y - centre.y) * DEGREES;
    };
    return [cut - edge(1), cut - edge(-1)];
  };
  if (above !== 0) return setting.cuts.map(ends);
  // About the axis every cut takes as much.
  const [from, to] = ends(0);
  return setting.cuts.map((cut) => [cut + from, cut + to]);
}

/** The middle line of a cut on the same circle. */
function middleOf({ offset }: Setting, cut: number, radius: number, above: number): number {
  const up = Math.sqrt(radius * radius - offset * offset);
  const [sin, cos] = [Math.sin(cut / DEGREES), Math.cos(cut / DEGREES)];
  return Math.atan2(-(offset * cos - up * sin), offset * sin + up * cos - above) * DEGREES;
}

const round = (angle: number): number => angle - 360 * Math.floor(angle / 360);

/** What of a circle no interval takes, as intervals that begin from 0 to 360. */
export function leftOver(taken: readonly Interval[]): Interval[] {
  const rising = taken
    .map(([from, to]): Interval => [round(from), round(from) + to - from])
    .sort((a, b) => a[0] - b[0]);
  const left: Interval[] = [];
  const [first] = rising;
  if (!first) return [[0, 360]];
  // Whatever runs past the full circle takes of its beginning too.
  let reached = Math.max(...rising.map(([, to]) => to)) - 360;
  reached = Math.max(reached, first[0]);
  for (const [from, to] of rising) {
    if (from > reached) left.push([reached, from]);
    reached = Math.max(reached, to);
  }
  if (reached < first[0] + 360) left.push([reached, first[0] + 360]);
  return left;
}

/** How much of some intervals lies from each bound on to the next. */
function shared(left: readonly Interval[], bounds: readonly number[]): number[] {
  const start = bounds[0] ?? 0;
  const places = bounds.map((bound) => round(bound - start));
  const sums = bounds.map(() => 0);
  for (const [from, to] of left) {
    let here = round(from - start);
    let rest = to - from;
    while (rest > 1e-12) {
      let at = places.length - 1;
      // The last bound that is not beyond.
      let [low, high] = [0, places.length - 1];
      while (low <= high) {
        const middle = (low + high) >> 1;
        if ((places[middle] ?? 0) <= here) [at, low] = [middle, middle + 1];
        else high = middle - 1;
      }
      const until = places[at + 1] ?? 360;
      const part = Math.min(rest, until - here);
      sums[at] = (sums[at] ?? 0) + part;
      rest -= part;
      here = until >= 360 ? 0 : until;
    }
  }
  return sums;
}

/** Greatest less least distance of the rim that is left from the axis. */
function swing(left: readonly Interval[], { blankRadius, eccentricity }: Setting): number {
  const reach = (angle: number): number =>
    Math.hypot(
      blankRadius * Math.sin(angle / DEGREES),
      eccentricity + blankRadius * Math.cos(angle / DEGREES),
    );
  const reaches = left.flatMap(([from, to]) => {
    const turns = [180, 360, 540].filter((angle) => angle > from && angle < to);
    return [from, to, ...turns].map(reach);
  });
  return reaches.length === 0 ? 0 : Math.max(...reaches) - Math.min(...reaches);
}
