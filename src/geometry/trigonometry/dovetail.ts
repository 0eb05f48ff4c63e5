import type { Point } from '../curves/point.js';
import { DEGREE } from './angles.js';
import { beside, meet } from './meet.js';

/** A dovetail measured over (male) or between (female) rollers in its corners; in the unit of its width. */
export interface DovetailOverRollers {
  readonly measurement: number;
  /** Width from corner to corner, where the slopes meet the floor: a male's narrow width, a female's wide one. */
  readonly cornerWidth: number;
  /** Height above the floor at which a roller touches the slope. */
  readonly touch: number;
}

/** Rollers lie outside a male, and inside a female. */
const OUTWARD = { male: 1, female: -1 } as const;

/**
 * Lays a roller into the right-hand corner, touching floor and slope, and measures to its far side (male) or to its
 * near one (female).
 *
 * @param width across the open face: a male's widest, a female's mouth
 * @param angle between slope and floor, degrees under 90
 */
export function overRollers(
  kind: 'male' | 'female',
  width: number,
  angle: number,
  rollerDiameter: number,
  depth: number,
): DovetailOverRollers {
  const outward = OUTWARD[kind];
  const radius = rollerDiameter / 2;
  const floor = { through: { x: 0, y: 0 }, towards: 0 };
  const lip: Point = { x: width / 2, y: depth };
  // Both slopes undercut: a male's rises outward over its rollers, a female's rises inward over hers.
  const slope = { through: lip, towards: outward > 0 ? angle * DEGREE : Math.PI - angle * DEGREE };
  const corner = meet(floor, slope);
  // The roller's centre is a radius from both lines: above the floor, and on the rollers' side of the slope.
  const centre = meet(beside(floor, radius), beside(slope, -outward * radius));
  return {
    measurement: 2 * (centre.x + outward * radius),
    cornerWidth: 2 * corner.x,
    touch: centre.y + outward * radius * Math.cos(slope.towards),
  };
}
