import { fitArcs } from '../curves/fit-arcs.js';
import { joined, type Path, throughPoints, turnedPath } from '../curves/path.js';
import { type Face, wheelFace } from './epicycloid.js';
import { allRound, flankFoot, type RootForm, TOLERANCE, toothBetween } from './tooth-outline.js';

/** A cycloidal wheel whose teeth are half a circular pitch thick. */
export interface CycloidalWheel {
  readonly teeth: number;
  /** Leaves of the pinion it drives, which make its generating circle; not more than its teeth. */
  readonly leaves: number;
  /** mm */
  readonly module: number;
  /** Height of the tip circle above the pitch circle, in modules; the teeth are pointed where the faces meet below it. */
  readonly addendum: number;
  /** In modules. */
  readonly dedendum: number;
  /** Default `flat`. */
  readonly root?: RootForm;
}

/**
 * The whole outline of a cycloidal wheel: faces by the epicycloid, cut off at the tip circle or pointed, radial
 * flanks, roots. One tooth is fitted, then turned round; a tooth stands on the x axis.
 *
 * @param wheel 6 to 1000 teeth, 5 leaves or more, module 0.05 to 20 mm
 * @param tolerance largest distance from the true curve, mm, above 0
 * @returns a closed outline of arcs and lines, anticlockwise about the origin, mm
 * @throws {RangeError} when the root leaves no flank
 */
export function wheelOutline(wheel: CycloidalWheel, tolerance = TOLERANCE): Path {
  return allRound(wheelTooth(wheel, tolerance), wheel.teeth);
}

/**
 * One tooth on the x axis and the root of the space after it, anticlockwise from the tooth's first foot.
 *
 * @param wheel, tolerance, throws as for `wheelOutline`
 */
export function wheelTooth(wheel: CycloidalWheel, tolerance = TOLERANCE): Path {
  const { teeth, leaves, module, addendum, dedendum, root = 'flat' } = wheel;
  const face = wheelFace(teeth, leaves, module);
  const pitchRadius = (module * teeth) / 2;
  const foot = {
    pitch: (2 * Math.PI) / teeth,
    halfTooth: face.halfTooth,
    pitchRadius,
    rootRadius: pitchRadius - module * dedendum,
    root,
  };
  const end = face.rollAt(pitchRadius + module * addendum);
  // So far the face is as good as the flank carried straight on.
  const straight = straightTo(face, end, tolerance);
  const side = joined(
    throughPoints([{ x: flankFoot(foot), y: 0 }, face.at(straight)]),
    fitArcs(face.at, straight, end, tolerance),
  );
  return toothBetween(turnedPath(side, -face.halfTooth), foot);
}

/** The roll at which the face has left the line of the flank by a distance, by bisection. */
function straightTo(face: Face, end: number, by: number): number {
  if (face.at(end).y <= by) return end;
  let [low, high] = [0, end];
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (face.at(middle).y < by) low = middle;
    else high = middle;
  }
  return low;
}
