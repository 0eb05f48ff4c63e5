import { fitArcs } from '../curves/fit-arcs.js';
import { arcFrom, type Path } from '../curves/path.js';
import { distance, mirrored, type Point, polar, turned } from '../curves/point.js';
import { type Face, wheelFace } from '../wheels/epicycloid.js';

/** What a wheel's spaces are made of, each in modules. */
export interface SpaceProportions {
  readonly addendum: number;
  readonly dedendum: number;
  /** Radius of the two corners at the bottom. */
  readonly corner: number;
}

/** The space between two teeth of a cycloidal wheel, upright above the wheel's axis; lengths mm, angles radians. */
export interface Space {
  readonly module: number;
  readonly pitchRadius: number;
  readonly rootRadius: number;
  readonly rimRadius: number;
  readonly corner: number;
  /** Half the angle the space takes of the pitch circle, as much as half a tooth takes. */
  readonly halfAngle: number;
  readonly face: Face;
}

/**
 * The space that a wheel's teeth leave: faces by the epicycloid of the pinion, radial flanks, round corners, and a
 * bottom along the root circle.
 *
 * @param teeth wheel teeth
 * @param leaves pinion leaves, not more than the teeth
 * @param module mm
 */
export function spaceOf(teeth: number, leaves: number, module: number, parts: SpaceProportions): Space {
  const pitchRadius = (module * teeth) / 2;
  const face = wheelFace(teeth, leaves, module);
  return {
    module,
    pitchRadius,
    rootRadius: pitchRadius - module * parts.dedendum,
    rimRadius: pitchRadius + module * parts.addendum,
    corner: module * parts.corner,
    halfAngle: face.halfTooth,
    face,
  };
}

/** The right-hand wall's face from the pitch circle outward, by its roll. */
export const wallFace = ({ face, halfAngle }: Space) => {
  const upright = Math.PI / 2 - halfAngle;
  return (roll: number): Point => turned(mirrored(face.at(roll)), upright);
};

/** The roll at which a face reaches a radius of the wheel, by bisection; at most where it comes to a point. */
export function rollAt({ face }: Space, radius: number): number {
  let [low, high] = [0, face.tipRoll];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    const { x, y } = face.at(middle);
    if (Math.hypot(x, y) < radius) low = middle;
    else high = middle;
  }
  return high;
}

/** Radius about the wheel's axis at which a corner passes into the flank. */
export const flankFoot = ({ rootRadius, corner }: Space): number =>
  Math.sqrt((rootRadius + corner) ** 2 - corner ** 2);

/** The largest corner a bottom has room for: one round from flank to flank. mm */
export function largestCorner(rootRadius: number, halfAngle: number): number {
  const sine = Math.sin(halfAngle);
  return (rootRadius * sine) / (1 - sine);
}

/**
 * The right-hand half of a space from the middle of its bottom to a roll of the face, as arcs and lines.
 *
 * @param tolerance largest distance from the true curve, mm
 */
export function halfSpace(space: Space, roll: number, tolerance: number): Path {
  const { rootRadius, corner, halfAngle, pitchRadius } = space;
  const upright = Math.PI / 2;
  const start = { x: 0, y: rootRadius };
  // The corner's circle stands on the root circle and touches the flank.
  const cornerBearing = Math.max(0, halfAngle - Math.asin(corner / (rootRadius + corner)));
  const bottom = arcFrom(start, { x: 0, y: 0 }, -cornerBearing);
  const centre = polar(rootRadius + corner, upright - cornerBearing);
  const foot = polar(flankFoot(space), upright - halfAngle);
  const toFoot = Math.atan2(foot.y - centre.y, foot.x - centre.x);
  const fromBottom = Math.atan2(bottom.to.y - centre.y, bottom.to.x - centre.x);
  const face = fitArcs(wallFace(space), 0, roll, tolerance);
  return {
    start,
    segments: [
      ...(cornerBearing > 0 ? [bottom] : []),
      ...(corner > 0 ? [{ to: foot, centre, turn: toFoot - fromBottom }] : []),
      ...(distance(foot, face.start) > 0 ? [{ to: polar(pitchRadius, upright - halfAngle) }] : []),
      ...face.segments,
    ],
  };
}
