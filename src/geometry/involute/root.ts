import { type Point, turned } from '../curves/point.js';
import { inv, rollTo } from './involute.js';
import { basicRack } from './rack.js';

/** The root of a tooth space as the rolling rack leaves it: the trochoid of its rounded tip. */
export interface Root {
  /**
   * A place of the trochoid, by the slant of the rack's rounding that touches there, radians: 0 where it leaves the
   * root circle. The space's middle lies on the x axis.
   */
  readonly at: (slant: number) => Point;
  /** The slant at which the trochoid meets the involute. */
  readonly meets: number;
  /** String unwound where the involute begins, radians. */
  readonly roll: number;
  /** Whether the trochoid cuts the foot of the involute away instead of running into it. */
  readonly undercut: boolean;
}

/**
 * The trochoid of the basic rack, and where it meets the involute. The rack's normal always passes through the point
 * where its pitch line touches the pitch circle, so that the place it touches follows from the slant. Without
 * undercut the trochoid runs into the involute where the rack's rounding ends; with undercut it crosses it above,
 * found by bisection.
 *
 * @param teeth 5 or more
 * @param pressureAngle radians
 */
export function rackRoot(teeth: number, module: number, pressureAngle: number): Root {
  const { rounding, straightTo } = basicRack(pressureAngle);
  const [radius, depth, beside] = [
    module * rounding.radius,
    module * rounding.depth,
    module * rounding.beside,
  ];
  const pitchRadius = (module * teeth) / 2;
  const baseRadius = pitchRadius * Math.cos(pressureAngle);
  const at = (slant: number): Point => {
    const along = depth * Math.tan(slant);
    const touch = {
      x: pitchRadius - depth - radius * Math.cos(slant),
      y: along + radius * Math.sin(slant),
    };
    return turned(touch, (beside - along) / pitchRadius);
  };
  const end = Math.PI / 2 - pressureAngle;
  const endRadius = Math.hypot(at(end).x, at(end).y);
  const undercut = module * straightTo > pitchRadius * Math.sin(pressureAngle) ** 2 * (1 + 1e-12);
  if (!undercut) return { at, meets: end, roll: rollTo(baseRadius, endRadius), undercut };

  const halfSpaceAtBase = Math.PI / (2 * teeth) - inv(pressureAngle);
  /** Above 0 inside the tooth: where the rack has cut deeper than the involute. */
  const beyond = (slant: number): number => {
    const { x, y } = at(slant);
    const roll = rollTo(baseRadius, Math.hypot(x, y));
    return Math.atan2(y, x) - halfSpaceAtBase - (roll - Math.atan(roll));
  };
  let [low, high] = [0, end];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    const { x, y } = at(middle);
    if (Math.hypot(x, y) < baseRadius || beyond(middle) > 0) low = middle;
    else high = middle;
  }
  const { x, y } = at(high);
  return { at, meets: high, roll: rollTo(baseRadius, Math.hypot(x, y)), undercut };
}
