import { rootsOf } from './roots.js';

/** A wheel and pinion between centres as the law of gearing takes them; lengths in modules. */
export interface GearedPair {
  readonly teeth: number;
  readonly leaves: number;
  readonly centres: number;
  /** Height of the tip above the pitch circle, and depth of the root circle below it. */
  readonly addendum: number;
  readonly dedendum: number;
  /** The leaf: how high it stands, how thick it is on the pitch circle, and the radius of its tip's arcs. */
  readonly leaf: { readonly addendum: number; readonly leafThickness: number; readonly tipRadius: number };
}

/** Where one tooth and one leaf touch, by the conditions of contact: the pinion's angle, and the ratio there. */
export interface Contact {
  readonly pinion: number;
  /** Of the pinion's speed to the wheel's, by where the common normal cuts the line of centres. */
  readonly ratio: number;
}

/** So little beyond the leaf's tip is dust of reckoning. */
const EDGE = 1e-12;

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * The contact of one tooth with its leaf that turns the pinion furthest, among all that the conditions of contact
 * allow: tangent of the face, or a point of it, on radial flank, corner, arc or tip of the leaf, each solved for itself
 * (Newton's method, kept between bounds where the sign changes). The frame is the tooth's own, its driving flank
 * along the x axis and its metal above.
 *
 * With the generating circle rolled by u and turned by w in itself, the face's tangent leans u + w/2; along it and across
 * it, the pinion's centre lies R cos(w/2) − a cos b and −(R + 2q) sin(w/2) − a sin b away, b = A − u − w/2.
 *
 * @param wheel angle of the tooth's driving flank from the line of centres, radians, rising with the motion
 */
export function furthestContact(pair: GearedPair, wheel: number): Contact | undefined {
  const { centres: a } = pair;
  const R = pair.teeth / 2;
  const q = pair.leaves / 4;
  const w = (u: number): number => (R * u) / q;
  const leaf = leafOf(pair);
  const pinion: Place = { x: a * Math.cos(wheel), y: a * Math.sin(wheel) };

  /** The face's place, and the way it looks out, for so much rolling. */
  const face = (u: number): { place: Place; out: Place } => ({
    place: {
      x: (R + q) * Math.cos(u) - q * Math.cos(u + w(u)),
      y: (R + q) * Math.sin(u) - q * Math.sin(u + w(u)),
    },
    out: { x: Math.sin(u + w(u) / 2), y: -Math.cos(u + w(u) / 2) },
  });
  const flankOut: Place = { x: 0, y: -1 };

  const found: Contact[] = [];
  const angleOf = ({ x, y }: Place): number => {
    // Seen from the pinion, against the line to the wheel.
    const [dx, dy] = [pinion.x - x, pinion.y - y];
    const [cos, sin] = [Math.cos(wheel), Math.sin(wheel)];
    return Math.atan2(dy * cos - dx * sin, dx * cos + dy * sin);
  };
  const note = (angle: number, at: Place, normal: Place): void => {
    // The normal cuts the line of centres at t from the wheel: t : (a − t) is the ratio.
    const across = at.x * normal.y - at.y * normal.x;
    const whole = pinion.x * normal.y - pinion.y * normal.x;
    found.push({ pinion: angle, ratio: across / (whole - across) });
  };

  /** A point of the tooth on the leaf, wherever on it that is. */
  const point = (at: Place): void => {
    const d = { x: pinion.x - at.x, y: pinion.y - at.y };
    const r = Math.hypot(d.x, d.y);
    if (r > leaf.tip + EDGE) return;
    const angle = angleOf(at);
    if (r <= leaf.pitch) return note(angle, at, { x: -d.y, y: d.x });
    // The triangle of the pinion's centre, the point and the arc's centre, by its half angles.
    const s = (r + leaf.reach + leaf.arc) / 2;
    const between = 2 * Math.atan2(Math.sqrt((s - r) * (s - leaf.reach)), Math.sqrt(s * (s - leaf.arc)));
    const toArc = angle + between + wheel;
    const centre = { x: pinion.x - leaf.reach * Math.cos(toArc), y: pinion.y - leaf.reach * Math.sin(toArc) };
    note(angle + between - leaf.bearing, at, { x: centre.x - at.x, y: centre.y - at.y });
  };

  /** A circle of the leaf, its centre so far out along the tooth's normal: its arc, or a point of no radius. */
  const circle = (at: Place, out: Place, { radius, bearing }: { radius: number; bearing: number }): void => {
    const centre = { x: at.x + radius * out.x, y: at.y + radius * out.y };
    note(angleOf(centre) - bearing, at, out);
  };

  const circles = [
    { reach: leaf.pitch, radius: 0, bearing: 0 },
    { reach: leaf.tip, radius: 0, bearing: leaf.half },
    { reach: leaf.reach, radius: leaf.arc, bearing: leaf.bearing },
  ];
  const within = ({ x, y }: Place): boolean => {
    const r = Math.hypot(pinion.x - x, pinion.y - y);
    return r > leaf.pitch - 1e-9 && r < leaf.tip + EDGE;
  };

  // The straight flank, from root circle to pitch circle.
  const [foot, top] = [R - pair.dedendum, R];
  for (const one of circles) {
    const half = one.reach ** 2 - (one.radius + pinion.y) ** 2;
    if (half < 0) continue;
    for (const x of [pinion.x - Math.sqrt(half), pinion.x + Math.sqrt(half)])
      if (x > foot && x < top && within({ x, y: 0 })) circle({ x, y: 0 }, flankOut, one);
  }

  // The face, from pitch circle to tip.
  const end = tipRoll(pair);
  const tilt = (u: number): number => wheel - u - w(u) / 2;
  const along = (u: number): number => R * Math.cos(w(u) / 2) - a * Math.cos(tilt(u));
  const across = (u: number): number => -(R + 2 * q) * Math.sin(w(u) / 2) - a * Math.sin(tilt(u));
  const lean = 1 + R / q / 2;
  const alongSlope = (u: number): number =>
    ((-R * R) / q / 2) * Math.sin(w(u) / 2) - a * lean * Math.sin(tilt(u));
  const acrossSlope = (u: number): number =>
    -((R + 2 * q) * R * Math.cos(w(u) / 2)) / q / 2 + a * lean * Math.cos(tilt(u));
  for (const u of rootsOf(across, acrossSlope, end)) {
    const { place } = face(u);
    if (Math.hypot(pinion.x - place.x, pinion.y - place.y) <= leaf.pitch) point(place);
  }
  for (const one of circles) {
    const off = (u: number): number => along(u) ** 2 + (across(u) - one.radius) ** 2 - one.reach ** 2;
    const slope = (u: number): number =>
      2 * along(u) * alongSlope(u) + 2 * (across(u) - one.radius) * acrossSlope(u);
    for (const u of rootsOf(off, slope, end)) {
      const { place, out } = face(u);
      if (within(place)) circle(place, out, one);
    }
  }

  for (const at of [{ x: foot, y: 0 }, { x: top, y: 0 }, face(end).place]) point(at);
  return found.reduce<Contact | undefined>(
    (best, one) => (best && best.pinion >= one.pinion ? best : one),
    undefined,
  );
}

/** The leaf about the pinion's centre, angles from its driven flank. */
function leafOf({ leaves, leaf }: GearedPair) {
  const pitch = leaves / 2;
  const tip = pitch + leaf.addendum;
  const half = leaf.leafThickness / leaves;
  // The arc's centre lies on the bisector of corner and tip, square to it from its middle.
  const [x, y] = [tip * Math.cos(half), tip * Math.sin(half)];
  const chord = Math.hypot(x - pitch, y);
  const lean = Math.atan2(y, x - pitch) + Math.acos(chord / 2 / leaf.tipRadius);
  const centre = { x: pitch + leaf.tipRadius * Math.cos(lean), y: leaf.tipRadius * Math.sin(lean) };
  return {
    pitch,
    tip,
    half,
    arc: leaf.tipRadius,
    reach: Math.hypot(centre.x, centre.y),
    bearing: Math.atan2(centre.y, centre.x),
  };
}

/** How far the generating circle rolls to reach the tip circle, by Newton's method on the radius. */
function tipRoll({ teeth, leaves, addendum }: GearedPair): number {
  const [R, q] = [teeth / 2, leaves / 4];
  const tip = R + addendum;
  const off = (u: number): number =>
    (R + q) ** 2 + q * q - 2 * (R + q) * q * Math.cos((R * u) / q) - tip * tip;
  const slope = (u: number): number => 2 * (R + q) * R * Math.sin((R * u) / q);
  return rootsOf(off, slope, (Math.PI * q) / R)[0] ?? 0;
}
