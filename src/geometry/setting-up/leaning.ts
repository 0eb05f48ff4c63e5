import { differenceD, FillRule } from 'clipper2-ts';
import { flattened, type Path, turnedPath } from '../curves/path.js';
import { distance, type Point, polar, turned } from '../curves/point.js';

/** Decimals of a millimetre that places are rounded to. */
const PLACES = 5;

/**
 * A wheel or pinion cut with the cutter of its own spaces, its middle set to one side of the axis.
 *
 * @param tooth one tooth on the x axis and the root of the space after it, anticlockwise, as outlines are made of
 * @param teeth how many are cut
 * @param offset of the cutter to the right of the axis, seen with the cut at the top, mm
 * @param tolerance largest distance of chords from their arcs, mm
 * @returns what is left, with the first space at the top; mm
 */
export function cutOffCentre(tooth: Path, teeth: number, offset: number, tolerance: number): Point[][] {
  const pitch = (2 * Math.PI) / teeth;
  const cutter = spaceAfter(tooth, pitch, tolerance).map(({ x, y }) => ({ x: x + offset, y }));
  const blank = Math.max(...flattened(tooth, tolerance).map(({ x, y }) => Math.hypot(x, y)));
  const cuts = Array.from({ length: teeth }, (_, i) => cutter.map((place) => turned(place, i * pitch)));
  return differenceD([disc(blank, tolerance)], cuts, FillRule.NonZero, PLACES).map((outline) =>
    outline.map(({ x, y }) => ({ x, y })),
  );
}

/** The space after a tooth, upright over the axis; from either tip the cutter goes straight on, clear of the blank. */
function spaceAfter(tooth: Path, pitch: number, tolerance: number): Point[] {
  const angle = ({ x, y }: Point): number => Math.atan2(y, x);
  const falling = flattened(tooth, tolerance).filter((place) => angle(place) > 0);
  const rising = flattened(turnedPath(tooth, pitch), tolerance).filter((place) => angle(place) < pitch);
  const tip = Math.max(...falling.map(({ x, y }) => Math.hypot(x, y)));
  const walls = [polar(tip, 0), ...falling, ...rising, polar(tip, pitch)].map((place) =>
    turned(place, (Math.PI - pitch) / 2),
  );
  return [...walls, beyond(walls.toReversed(), tip), { x: 0, y: 3 * tip }, beyond(walls, tip)];
}

/** So far straight on past the first of some places; they may begin with one place twice. */
function beyond(places: readonly Point[], by: number): Point {
  const end = places[0] as Point;
  const before = places.find((place) => distance(place, end) > 1e-9) as Point;
  const step = by / distance(before, end);
  return { x: end.x + (end.x - before.x) * step, y: end.y + (end.y - before.y) * step };
}

function disc(radius: number, tolerance: number): Point[] {
  const corners = Math.ceil(Math.PI / Math.acos(1 - tolerance / radius));
  return Array.from({ length: corners }, (_, i) => polar(radius, (2 * Math.PI * i) / corners));
}
