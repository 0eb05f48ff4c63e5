import { turnedPath } from '../../../geometry/curves/path.js';
import { pinionLeaf } from '../../../geometry/wheels/pinion-outline.js';
import type { Pair } from '../../../geometry/wheels/rolling.js';
import { allRound } from '../../../geometry/wheels/tooth-outline.js';
import { wheelTooth } from '../../../geometry/wheels/wheel-outline.js';
import { traceOutline } from '../../drafting/outline.js';
import { type Point, point } from '../../drafting/point.js';
import type { Pen } from '../../pen.js';
import { drawRow, exchanged, rowOfTeeth } from './teeth.js';

/** A wheel below and its pinion above, as they stand; lengths in modules, angles as the rolling has them. */
export interface MeshView {
  readonly pair: Pair & { readonly pinionDedendum: number };
  /** Angle of a tooth's driving flank from the line of centres, and of its leaf's. */
  readonly wheel: number;
  readonly pinion: number;
}

/** Teeth and leaves are shown so many pitches to either side of the line of centres. */
const SHOWN = 1.5;

/** With more leaves than this the pinion is broken off like the wheel. */
const WHOLE = 12;

/** How far the rims reach below the roots, modules. */
const RIM = 0.9;

/**
 * Draws a mesh, motion from left to right. The line of centres stands upright through a place, which lies on the
 * wheel's pitch circle.
 *
 * @param size a module on the paper, mm
 */
export function drawMesh(pen: Pen, { pair, wheel, pinion }: MeshView, at: Point, size: number): void {
  const { teeth, leaves, centres, leaf, pinionDedendum } = pair;
  const [wheelPitch, pinionPitch] = [(2 * Math.PI) / teeth, (2 * Math.PI) / leaves];
  const [wheelRadius, pinionRadius] = [(teeth / 2) * size, (leaves / 2) * size];
  const wheelCentre = point(at.x, at.y + wheelRadius);
  const pinionCentre = point(at.x, wheelCentre.y - centres * size);

  const tooth = wheelTooth({ ...pair, module: size });
  const row = rowOfTeeth(tooth, wheelPitch, near(wheel - wheelPitch / 4, wheelPitch));
  drawRow(pen, exchanged(row), wheelRadius - (pair.dedendum + RIM) * size, wheelCentre);

  const upright = pinionLeaf({ leaves, module: size, ...leaf, dedendum: pinionDedendum });
  // About its own centre the pinion goes the other way, and the wheel lies behind it.
  const middle = -(pinion + leaf.leafThickness / leaves);
  if (leaves <= WHOLE) {
    const whole = exchanged(turnedPath(allRound(upright, leaves), Math.PI + middle));
    pen.stroke('outline', (trace) => traceOutline(trace, whole, pinionCentre, 1));
  } else {
    const angles = near(middle, pinionPitch).map((angle) => Math.PI + angle);
    const rim = pinionRadius - (pinionDedendum + RIM) * size;
    drawRow(pen, exchanged(rowOfTeeth(upright, pinionPitch, angles)), rim, pinionCentre);
  }
}

/** Angles a pitch apart about nought, one of them as given, as many as are shown. */
function near(one: number, pitch: number): number[] {
  const first = Math.ceil((-SHOWN * pitch - one) / pitch);
  const last = Math.floor((SHOWN * pitch - one) / pitch);
  return Array.from({ length: last - first + 1 }, (_, i) => one + (first + i) * pitch);
}

/** How far a mesh reaches to either side, up and down of the wheel's pitch circle, mm. */
export function meshReach(
  { teeth, leaves, centres, dedendum, leaf, pinionDedendum }: MeshView['pair'],
  size: number,
) {
  const side = (radius: number, count: number): number =>
    radius * Math.sin(Math.min(Math.PI / 2, ((SHOWN + 0.5) * 2 * Math.PI) / count));
  const tip = leaves / 2 + leaf.addendum;
  const whole = leaves <= WHOLE;
  return {
    side: size * Math.max(side(teeth / 2 + 2, teeth), whole ? tip : side(tip, leaves)),
    up: size * (centres - teeth / 2 + (whole ? tip : -leaves / 2 + pinionDedendum + RIM + 0.6)),
    down: size * (dedendum + RIM + (teeth / 2) * (1 - Math.cos(((SHOWN + 0.5) * 2 * Math.PI) / teeth))),
  };
}
