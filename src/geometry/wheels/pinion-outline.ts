import { type Path, turnedPath } from '../curves/path.js';
import { polar } from '../curves/point.js';
import { type LeafForm, leafSide } from './leaf.js';
import { allRound, flankFoot, type RootForm, toothBetween } from './tooth-outline.js';

/** A pinion with radial flanks and tips rounded by arcs: half round, or pointed (ogive). */
export interface CycloidalPinion extends LeafForm {
  readonly leaves: number;
  /** mm */
  readonly module: number;
  /** In modules. */
  readonly dedendum: number;
  /** Default `flat`. */
  readonly root?: RootForm;
}

/**
 * The whole outline of a pinion: it is arcs and lines by nature, so that nothing is fitted. A leaf stands on the x axis.
 *
 * @param pinion 5 leaves or more, module 0.05 to 20 mm, proportions in modules
 * @returns a closed outline, anticlockwise about the origin, mm
 * @throws {RangeError} when the root leaves no flank, or the tip's arc does not reach
 */
export const pinionOutline = (pinion: CycloidalPinion): Path => allRound(pinionLeaf(pinion), pinion.leaves);

/**
 * One leaf on the x axis and the root of the space after it, anticlockwise from the leaf's first foot.
 *
 * @param pinion, throws as for `pinionOutline`
 */
export function pinionLeaf(pinion: CycloidalPinion): Path {
  const { leaves, module, dedendum, root = 'flat' } = pinion;
  const side = leafSide(leaves, pinion, module);
  const { pitchRadius, tipRadius, halfAngle, arcCentre } = side;
  const foot = {
    pitch: (2 * Math.PI) / leaves,
    halfTooth: halfAngle,
    pitchRadius,
    rootRadius: pitchRadius - module * dedendum,
    root,
  };
  const [corner, tip] = [polar(pitchRadius, 0), polar(tipRadius, halfAngle)];
  const [a, b] = [corner, tip].map(({ x, y }) => ({ x: x - arcCentre.x, y: y - arcCentre.y })) as [
    typeof tip,
    typeof tip,
  ];
  const turn = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
  const rising: Path = {
    start: polar(flankFoot(foot), 0),
    segments: [{ to: corner }, { to: tip, centre: arcCentre, turn }],
  };
  return toothBetween(turnedPath(rising, -halfAngle), foot);
}
