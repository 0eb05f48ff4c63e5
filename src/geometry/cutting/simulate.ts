import { Clipper, Clipper64, ClipType, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import { type Point, polar } from '../curves/point.js';
import { cutterPolygon } from './cutter.js';
import type { Space } from './space.js';

/** A blank and the cutter's setting; lengths mm about the axis that the head turns on. */
export interface Job {
  /** The space the cutter was made for. */
  readonly space: Space;
  /** Where each cut is made, degrees anticlockwise from the top. */
  readonly cuts: readonly number[];
  /** From the axis to the tip of the cutter at full depth. */
  readonly tipAt: number;
  /** The cutter's middle to the right of the axis, seen with the cut at the top. */
  readonly offset: number;
  readonly blankRadius: number;
  /** The blank's middle above the axis while the first cut is made. */
  readonly eccentricity: number;
}

/** How finely metal is followed, in modules: chords from their arcs, and the grid that places are rounded to. */
export const FINENESS = 5e-4;
const GRID = 1e-5;

/**
 * Cuts a wheel: the cutter's form taken from the blank at every place it is indexed to.
 *
 * @returns what is left, outer edges anticlockwise, mm; within two chords' straying (`FINENESS` modules each) of the
 *   true shape
 */
export function cutWheel(job: Job): Point[][] {
  const { space, blankRadius, eccentricity } = job;
  const unit = GRID * space.module;
  const tolerance = FINENESS * space.module;
  const highest = blankRadius + Math.abs(eccentricity) + 0.1 * space.module;
  const cutter = cutterPolygon(space, highest - job.tipAt, tolerance);
  const engine = new Clipper64();
  const add = (paths: Paths64, clip: boolean) => (clip ? engine.addClip(paths) : engine.addSubject(paths));
  add([gridded(circle(blankRadius, eccentricity, tolerance), unit)], false);
  add(
    job.cuts.map((angle) => gridded(placed(cutter, job, angle), unit)),
    true,
  );
  const left: Paths64 = [];
  engine.execute(ClipType.Difference, FillRule.NonZero, left);
  return left.map((path) => path.map(({ x, y }) => ({ x: x * unit, y: y * unit })));
}

/** The cutter at an index: turned about the axis, its middle set over. */
function placed(cutter: readonly Point[], { offset, tipAt }: Job, degrees: number): Point[] {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return cutter.map(({ x, y }) => ({
    x: (x + offset) * cos - (y + tipAt) * sin,
    y: (x + offset) * sin + (y + tipAt) * cos,
  }));
}

function circle(radius: number, above: number, tolerance: number): Point[] {
  const corners = Math.ceil(Math.PI / Math.acos(1 - tolerance / radius));
  return Array.from({ length: corners }, (_, i) => {
    const { x, y } = polar(radius, (2 * Math.PI * i) / corners);
    return { x, y: y + above };
  });
}

const gridded = (points: readonly Point[], unit: number): Path64 =>
  points.map(({ x, y }) => ({ x: Math.round(x / unit), y: Math.round(y / unit) }));

/** Outlines with the points left out that stand within so many mm of the line past them. */
export function fewerPoints(outlines: readonly (readonly Point[])[], within: number): Point[][] {
  return outlines.map((outline) => Clipper.simplifyPathD([...outline], within).map(({ x, y }) => ({ x, y })));
}
