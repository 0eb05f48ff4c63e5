/** How a wheel is crossed out; lengths mm. */
export interface CrossedWheel {
  readonly arms: number;
  readonly rimInsideDiameter: number;
  readonly hubDiameter: number;
  readonly armWidthAtRim: number;
  readonly armWidthAtHub: number;
  readonly filletRadius: number;
}

/** A window by angles about the axis and distances from it. */
export interface Window {
  /** Half the angle from arm to arm, radians; all other angles are counted from an arm's middle line. */
  readonly half: number;
  /** Angle of the arm's side to its middle line, and how far from the axis that side passes. */
  readonly lean: number;
  readonly past: number;
  readonly hub: Round;
  readonly rim: Round;
}

/** A disc of the fillet's radius that touches an arm's side and one of the circles. */
export interface Round {
  /** Radius of the circle it touches. */
  readonly circle: number;
  /** Distance and angle of its middle. */
  readonly reach: number;
  readonly angle: number;
  /** Distance from the axis of where it touches the side. */
  readonly leaves: number;
  /** How far along the side that is. */
  readonly along: number;
}

/** A gap less than this is none, mm. */
const NO_GAP = 0.001;

/** One window of a crossed wheel, its rounds found by rolling a disc; none where there is no room for it. */
export function windowByRolling(wheel: CrossedWheel): Window | undefined {
  const half = Math.PI / wheel.arms;
  const [rim, hub] = [wheel.rimInsideDiameter / 2, wheel.hubDiameter / 2];
  const atRim = Math.asin(wheel.armWidthAtRim / wheel.rimInsideDiameter);
  const atHub = Math.asin(wheel.armWidthAtHub / wheel.hubDiameter);
  if (hub * (half - atHub) < NO_GAP || rim * (half - atRim) < NO_GAP) return undefined;
  // Nearer than this the side would start into the hub instead of away from it.
  if (rim * Math.cos(atRim - atHub) <= hub) return undefined;
  const lean = Math.atan2(
    rim * Math.sin(atRim) - hub * Math.sin(atHub),
    rim * Math.cos(atRim) - hub * Math.cos(atHub),
  );
  const past = hub * Math.sin(atHub - lean);
  const r = wheel.filletRadius;
  const hubRound = rolled(hub, hub + r, lean, past, r);
  const rimRound = rolled(rim, rim - r, lean, past, r);
  if (!hubRound || !rimRound) return undefined;
  const gaps = [
    rimRound.along - hubRound.along,
    hub * (half - hubRound.angle),
    rim * (half - rimRound.angle),
  ];
  return Math.min(...gaps) < NO_GAP ? undefined : { half, lean, past, hub: hubRound, rim: rimRound };
}

/** A disc rolled round a circle, from behind the arm's side until it just touches that from without. */
function rolled(
  circle: number,
  reach: number,
  lean: number,
  past: number,
  radius: number,
): Round | undefined {
  if (reach <= past + radius) return undefined;
  const clearOfSide = (angle: number): boolean => reach * Math.sin(angle - lean) - past > radius;
  let [touching, clear] = [lean - Math.PI / 2, lean + Math.PI / 2];
  for (let trial = 0; trial < 60; trial++) {
    const middle = (touching + clear) / 2;
    if (clearOfSide(middle)) clear = middle;
    else touching = middle;
  }
  const along = reach * Math.cos(clear - lean);
  return { circle, reach, angle: clear, along, leaves: Math.hypot(along, past) };
}

/** Angle of the window's edge at a distance from the axis, radians from the arm's middle line. */
export function edgeAt({ lean, past, hub, rim }: Window, distance: number, fillet: number): number {
  const round = distance < hub.leaves ? hub : distance > rim.leaves ? rim : undefined;
  if (!round) return lean + Math.asin(past / distance);
  // Half-angle form of the cosine rule, which keeps its figures where the round touches its circle.
  const apart = round.reach - distance;
  const tangent = Math.sqrt(
    Math.max(0, (fillet - apart) * (fillet + apart)) / ((distance + round.reach) ** 2 - fillet ** 2),
  );
  return round.angle - 2 * Math.atan(tangent);
}

/** Length round one window, mm. */
export function lengthRound({ half, lean, hub, rim }: Window, fillet: number): number {
  const rounds = rim.angle - lean + Math.PI / 2 + (lean + Math.PI / 2 - hub.angle);
  const arcs = rim.circle * (half - rim.angle) + hub.circle * (half - hub.angle);
  return 2 * (rim.along - hub.along + arcs + fillet * rounds);
}
