import { distance, type Point, turned } from '../curves/point.js';
import { bearing, metalRound, type Stretch } from './around.js';
import { median } from './median.js';
import type { Job } from './simulate.js';
import { flankFoot } from './space.js';

const RADIANS = Math.PI / 180;
const AXIS: Point = { x: 0, y: 0 };

/** Where the straight flanks are sighted along: parts of the way from corner to pitch circle. */
const SIGHTS = [0.25, 0.75] as const;

/** Spaces count when they stand at least this part as clear of their neighbours as the one that stands clearest. */
const CLEAR = 0.9;

/**
 * How far a wheel's spaces lean at the pitch circle, by their shape: both flanks of a space are sighted along, the line
 * midway between them is carried down, and passes the axis at some distance. Degrees, anticlockwise above 0.
 *
 * @param spaces where they were cut, degrees
 */
export function leanOf(
  outlines: readonly (readonly Point[])[],
  job: Job,
  spaces: readonly number[],
  pitchRadius: number,
): number {
  const [low, high] = SIGHTS.map((part) => metalRound(outlines, AXIS, sightRadius(job, part)));
  const past = clearSpaces(spaces).map((cut) => {
    const [lower, upper] = SIGHTS.map((part) => sightRadius(job, part)) as [number, number];
    return passing(walls(low ?? [], cut, job, lower), walls(high ?? [], cut, job, upper));
  });
  return Math.asin(Math.max(-1, Math.min(1, median(past) / pitchRadius))) / RADIANS;
}

/** Those of some spaces that stand clear of their neighbours; degrees, in order round the wheel. */
export function clearSpaces(spaces: readonly number[]): number[] {
  const gaps = spaces.map((cut, i) => {
    const before = spaces[i - 1] ?? (spaces.at(-1) ?? 0) - 360;
    const after = spaces[i + 1] ?? (spaces[0] ?? 0) + 360;
    return Math.min(cut - before, after - cut);
  });
  const clearest = Math.max(...gaps);
  return spaces.filter((_, i) => (gaps[i] ?? 0) >= CLEAR * clearest);
}

/** Radius about the axis of a place along a flank. */
function sightRadius({ space, tipAt, offset }: Job, part: number): number {
  const along = flankFoot(space) + part * (space.pitchRadius - flankFoot(space));
  // The point the flanks converge on stands above or below the axis as the cutter's depth has it.
  const apex = tipAt - space.rootRadius;
  return Math.hypot(apex + along * Math.cos(space.halfAngle), offset);
}

type Walls = readonly [left: Point, right: Point];

/** The edges of metal to either hand of a cut on a circle, turned back so that the cut stands at the top. */
function walls(metal: readonly Stretch[], cut: number, { offset }: Job, radius: number): Walls {
  const middle = bearing(turned({ x: offset, y: Math.sqrt(radius ** 2 - offset ** 2) }, cut * RADIANS), AXIS);
  const onward = (angle: number): number => (((angle - middle) % 360) + 360) % 360;
  const left = Math.min(...metal.map(({ from }) => onward(from)));
  const right = Math.max(...metal.map(({ to }) => onward(to)));
  const at = (angle: number): Point => turned({ x: 0, y: radius }, (middle + angle - cut) * RADIANS);
  return [at(left), at(right)];
}

/** How far to the right of the axis the line midway between two flanks passes. */
function passing([lowLeft, lowRight]: Walls, [highLeft, highRight]: Walls): number {
  const left = along(lowLeft, highLeft);
  const right = along(lowRight, highRight);
  const middle = { x: left.x + right.x, y: left.y + right.y };
  const size = Math.hypot(middle.x, middle.y);
  // Each flank's distance from the axis; the line midway has their mean over the cosine of half the angle between.
  const cosine = size / 2;
  return (across(lowLeft, left) + across(lowRight, right)) / 2 / cosine;
}

function along(a: Point, b: Point): Point {
  const length = distance(a, b);
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/** Distance of a line to the right of the axis, by a place on it and its direction. */
const across = (p: Point, direction: Point): number => p.x * direction.y - p.y * direction.x;
