import { addendumByFixedPoint } from '../wheels/addendum.js';

/** A space by its sizes: counts, and lengths in mm. */
export interface SpaceSizes {
  readonly teeth: number;
  readonly leaves: number;
  readonly module: number;
  readonly rootRadius: number;
  readonly corner: number;
}

/**
 * Half the angle that a space takes at each radius about the wheel's axis, radians, in closed form: at the root and
 * corner by the triangle of axis, corner's centre and place; along the flank constant; on the face by the triangle of
 * axis, generating circle's centre and place; past the point of the tooth along the face's tangent. 0 below the root.
 */
export function halfAngleOf(space: SpaceSizes): (radius: number) => number {
  const { teeth, leaves, module, rootRadius, corner } = space;
  const pitch = (module * teeth) / 2;
  const roller = (module * leaves) / 4;
  const arm = pitch + roller;
  const flank = Math.PI / (2 * teeth);
  const tip = pitch + module * addendumByFixedPoint(teeth, leaves);
  const cornerArm = rootRadius + corner;
  const cornerBearing = flank - Math.asin(corner / cornerArm);
  const foot = Math.sqrt(cornerArm * cornerArm - corner * corner);
  /** Roll of the generating circle about itself when it traces a radius. */
  const rolled = (radius: number): number =>
    acos((arm * arm + roller * roller - radius * radius) / (2 * arm * roller));
  const traced = (radius: number): number => {
    const t = rolled(radius);
    return (roller * t) / pitch - Math.atan2(roller * Math.sin(t), arm - roller * Math.cos(t));
  };
  const atTip = traced(tip);
  const rolledTip = rolled(tip);
  // The face's direction there, from the radius of the tip.
  const slope = (roller * rolledTip) / pitch + rolledTip / 2 - atTip;
  return (radius) => {
    if (radius < rootRadius) return 0;
    if (radius < foot)
      return cornerBearing + acos((radius * radius + foot * foot) / (2 * radius * cornerArm));
    if (radius <= pitch) return flank;
    if (radius <= tip) return flank + traced(radius);
    const along =
      Math.sqrt(Math.max(0, radius * radius - (tip * Math.sin(slope)) ** 2)) - tip * Math.cos(slope);
    return flank + atTip + Math.atan2(along * Math.sin(slope), tip + along * Math.cos(slope));
  };
}

/** Area of a space up to a radius about the wheel's axis, mm²: thin rings added up, Simpson's rule stretch by stretch. */
export function areaOfSpace(space: SpaceSizes, rim: number): number {
  const half = halfAngleOf(space);
  const foot = Math.sqrt((space.rootRadius + space.corner) ** 2 - space.corner ** 2);
  const pitch = (space.module * space.teeth) / 2;
  const ring = (radius: number): number => 2 * radius * half(radius);
  return rings(ring, space.rootRadius, foot) + rings(ring, foot, pitch) + rings(ring, pitch, rim);
}

/** The stretch is shared by a square at its beginning, where a corner leaves the root steeply. */
function rings(ring: (radius: number) => number, from: number, to: number): number {
  const count = 200;
  const at = (i: number): number => {
    const u = i / count;
    return ring(from + (to - from) * u * u) * 2 * u;
  };
  let sum = at(0) + at(count);
  for (let i = 1; i < count; i++) sum += (i % 2 === 0 ? 2 : 4) * at(i);
  return ((to - from) * sum) / (3 * count);
}

const acos = (cosine: number): number => Math.acos(Math.max(-1, Math.min(1, cosine)));

/** How far a place, seen from the wheel's axis with the space upright, is from the walls or the bottom of the space. */
export function strayFrom(space: SpaceSizes): (x: number, y: number) => number {
  const half = halfAngleOf(space);
  const cornerArm = space.rootRadius + space.corner;
  const foot = Math.sqrt(cornerArm ** 2 - space.corner ** 2);
  const bearing = Math.PI / (2 * space.teeth) - Math.asin(space.corner / cornerArm);
  const corner = { x: cornerArm * Math.sin(bearing), y: cornerArm * Math.cos(bearing) };
  return (x, y) => {
    const radius = Math.hypot(x, y);
    const angle = Math.atan2(Math.abs(x), y);
    const bottom = angle <= bearing ? Math.abs(radius - space.rootRadius) : Number.POSITIVE_INFINITY;
    // Along the circle, which is never less than straight to the wall.
    const wall =
      radius > foot
        ? radius * Math.abs(angle - half(radius))
        : Math.abs(Math.hypot(Math.abs(x) - corner.x, y - corner.y) - space.corner);
    return Math.min(bottom, wall);
  };
}
