import type { Point } from '../curves/point.js';
import { wheelFace } from './epicycloid.js';
import { type LeafForm, leafSide } from './leaf.js';

/** A wheel and its pinion between two centres; lengths in modules. */
export interface Pair {
  readonly teeth: number;
  /** Not more than the teeth. */
  readonly leaves: number;
  readonly centres: number;
  /** Of the wheel, up to the theoretical one, and down to its root circle. */
  readonly addendum: number;
  readonly dedendum: number;
  readonly leaf: LeafForm;
}

/** A tooth that touches a leaf: where the pinion must stand, and what touches. */
export interface Touch {
  /** Angle of the leaf's flank about the pinion's centre, from the line of centres, radians. */
  readonly pinion: number;
  /** The place on the wheel's tooth, on a wheel whose flank lies along its x axis. */
  readonly onTooth: Point;
}

/** A pair that can be turned through mesh. Angles in radians, rising the way the two go where they meet. */
export interface Rolling {
  readonly pair: Pair;
  /** Angle from tooth to tooth of the wheel, and from leaf to leaf. */
  readonly wheelPitch: number;
  readonly pinionPitch: number;
  /** A tooth further round than this from the line of centres cannot be touched; below 0 when none can. */
  readonly reach: number;
  /**
   * Where one tooth puts its leaf: the least pinion angle at which the tooth does not cut into the leaf. None where
   * the tooth is out of the leaf's reach.
   *
   * @param wheel angle of the tooth's driving flank from the line of centres
   */
  readonly touch: (wheel: number) => Touch | undefined;
  /**
   * The tooth that drives, counted from the one whose flank is at the angle, and where it puts the pinion. None
   * when no tooth reaches a leaf.
   */
  readonly drive: (wheel: number) => Drive | undefined;
}

/** The tooth that drives a pinion, so many teeth behind another, and the pinion's angle. */
export interface Drive {
  readonly tooth: number;
  readonly pinion: number;
}

/** Places tried along the flank and along the face before the best is refined. */
const ON_FLANK = 10;
const ON_FACE = 30;

/** A place no further beyond the leaf's tip than this, modules, is on it. */
const EDGE = 1e-12;

/** How much further back, radians to a module, a leaf counts beyond its tip: so that no place there ever touches. */
const STEEP = 1e3;

/**
 * Turns a pair through mesh by trying every place of the tooth's driving side. A place at a radius about the pinion's
 * centre and at an angle there touches the leaf's side of the same radius when the pinion has turned by the
 * difference; the greatest of these over all places is where the pinion must stand. The greatest is found among places tried,
 * then by golden section.
 *
 * @throws {RangeError} for a leaf whose arc does not reach
 */
export function rolling(pair: Pair): Rolling {
  const { teeth, leaves, centres } = pair;
  const leaf = leafSide(leaves, pair.leaf);
  const side = drivingSide(pair);
  const tried = Array.from({ length: ON_FLANK + ON_FACE + 1 }, (_, i) =>
    i < ON_FLANK ? i / ON_FLANK - 1 : (i - ON_FLANK) / ON_FACE,
  );
  const places = tried.map(side);
  const [wheelPitch, pinionPitch] = [(2 * Math.PI) / teeth, (2 * Math.PI) / leaves];
  const reach = halfOverlap(teeth / 2 + pair.addendum, leaf.tipRadius, centres) + wheelPitch / 2;

  /** Where a place of the tooth would put the leaf, and how far beyond the leaf's tip it lies. */
  const put = (place: Point, cos: number, sin: number) => {
    const x = centres - (place.x * cos - place.y * sin);
    const y = place.x * sin + place.y * cos;
    const beyond = Math.hypot(x, y) - leaf.tipRadius;
    const back = leaf.backAt(Math.min(leaf.tipRadius, leaf.tipRadius + beyond));
    return { pinion: Math.atan2(y, x) - back - STEEP * Math.max(0, beyond), beyond };
  };

  const touch = (wheel: number): Touch | undefined => {
    const [cos, sin] = [Math.cos(wheel), Math.sin(wheel)];
    const angles = places.map((place) => put(place, cos, sin).pinion);
    let best: Touch | undefined;
    for (const [i, angle] of angles.entries()) {
      if (angle < (angles[i - 1] ?? -Infinity) || angle < (angles[i + 1] ?? -Infinity)) continue;
      const [from, to] = [tried[i - 1] ?? -1, tried[i + 1] ?? 1];
      const at = greatest((s) => put(side(s), cos, sin).pinion, from, to);
      const onTooth = side(at);
      const { pinion, beyond } = put(onTooth, cos, sin);
      if (beyond < EDGE && (best === undefined || pinion > best.pinion)) best = { pinion, onTooth };
    }
    return best;
  };

  const drive = (wheel: number): Drive | undefined => {
    let furthest: Drive | undefined;
    const last = Math.floor((wheel + reach) / wheelPitch);
    for (let tooth = Math.ceil((wheel - reach) / wheelPitch); tooth <= last; tooth++) {
      const one = touch(wheel - tooth * wheelPitch);
      const pinion = (one?.pinion ?? -Infinity) + tooth * pinionPitch;
      if (pinion > (furthest?.pinion ?? -Infinity)) furthest = { tooth, pinion };
    }
    return furthest;
  };
  return { pair, wheelPitch, pinionPitch, reach, touch, drive };
}

/** The driving side of a tooth, its flank along the x axis: from −1 at the root, 0 on the pitch circle, to 1 at the tip. */
function drivingSide({ teeth, leaves, addendum, dedendum }: Pair): (s: number) => Point {
  const face = wheelFace(teeth, leaves);
  const end = face.rollAt(teeth / 2 + addendum);
  return (s) => {
    if (s <= 0) return { x: teeth / 2 + s * dedendum, y: 0 };
    const { x, y } = face.at(s * end);
    return { x, y: -y };
  };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function that rises and then falls is greatest, by golden section. */
function greatest(f: (s: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [fa, fb] = [f(a), f(b)];
  for (let step = 0; step < 70; step++) {
    // A smooth top is flat to the last bit long before a corner is found as closely.
    if (fa === fb && high - low < 1e-7) break;
    if (fa < fb) {
      [low, a, fa] = [a, b, fb];
      b = low + GOLDEN * (high - low);
      fb = f(b);
    } else {
      [high, b, fb] = [b, a, fa];
      a = high - GOLDEN * (high - low);
      fa = f(a);
    }
  }
  return [from, to, (low + high) / 2].reduce((best, s) => (f(s) > f(best) ? s : best));
}

/** Half the angle, about the first centre, of the part where two circles overlap; well below 0 when they do not. */
function halfOverlap(one: number, other: number, centres: number): number {
  const cosine = (centres ** 2 + one ** 2 - other ** 2) / (2 * centres * one);
  return cosine > 1 ? -Infinity : Math.acos(Math.max(-1, cosine));
}
