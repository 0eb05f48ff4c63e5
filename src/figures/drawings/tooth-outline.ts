import { InputError } from '../../diagnostics/errors.js';
import { distance, onBearing, type Point } from '../drafting/point.js';
import type { Trace } from '../drafting/trace.js';

/** A cycloidal tooth or leaf as it is drawn: radial flanks below the pitch circle, two arcs above it. */
export interface ToothShape {
  readonly rootRadius: number;
  readonly pitchRadius: number;
  readonly tipRadius: number;
  /** Half the angle the tooth takes of the pitch circle, radians. */
  readonly halfAngle: number;
  /** Radius of the arc from pitch circle to tip, mm. */
  readonly faceRadius: number;
}

/** What is drawn: a tooth upright above the origin, half of the one before it, and some of the rim below. */
export interface DrawnTeeth {
  readonly shape: ToothShape;
  /** Angle from tooth to tooth, radians. */
  readonly pitchAngle: number;
  /** Radius at which the rim is broken off, and bearing of its right end. */
  readonly body: number;
  readonly end: number;
}

/** The five corners of a tooth whose middle stands on a bearing about the origin. */
export function toothCorners(shape: ToothShape, bearing: number) {
  const { rootRadius, pitchRadius, tipRadius, halfAngle } = shape;
  return {
    rootBefore: onBearing(rootRadius, bearing - halfAngle),
    pitchBefore: onBearing(pitchRadius, bearing - halfAngle),
    tip: onBearing(tipRadius, bearing),
    pitchAfter: onBearing(pitchRadius, bearing + halfAngle),
    rootAfter: onBearing(rootRadius, bearing + halfAngle),
  } satisfies Record<string, Point>;
}

/** Draws on clockwise over a whole tooth, from its first root corner to its last. */
export function traceTooth(trace: Trace, shape: ToothShape, bearing: number): void {
  const corners = toothCorners(shape, bearing);
  trace
    .lineTo(corners.pitchBefore)
    .bend(corners.tip, shape.faceRadius, 'clockwise')
    .bend(corners.pitchAfter, shape.faceRadius, 'clockwise')
    .lineTo(corners.rootAfter);
}

/**
 * An arc joins pitch circle and tip only if its radius is at least half the distance between them.
 *
 * @throws {InputError} naming the value that is too small
 */
export function checkFace(key: string, shape: ToothShape): void {
  const { pitchAfter, tip } = toothCorners(shape, 0);
  // Rounded up, so that the least radius named is one that serves.
  const least = Math.ceil((distance(pitchAfter, tip) / 2) * 1000) / 1000;
  if (shape.faceRadius < least) {
    throw new InputError(
      key,
      shape.faceRadius,
      `a radius that reaches from pitch circle to tip, ${least} mm or more`,
    );
  }
}

/** Every length of a tooth at a scale; angles never scale. */
export const enlarged = (shape: ToothShape, scale: number): ToothShape => ({
  rootRadius: shape.rootRadius * scale,
  pitchRadius: shape.pitchRadius * scale,
  tipRadius: shape.tipRadius * scale,
  halfAngle: shape.halfAngle,
  faceRadius: shape.faceRadius * scale,
});

/** The middle of the face that looks back, against the clock, on a tooth's bearing. */
export function faceMiddle(shape: ToothShape, bearing: number): Point {
  const { pitchBefore: p, tip } = toothCorners(shape, bearing);
  const chord = distance(p, tip);
  const bulge = (shape.faceRadius - Math.sqrt(Math.max(0, shape.faceRadius ** 2 - chord ** 2 / 4))) / chord;
  return { x: (p.x + tip.x) / 2 + (tip.y - p.y) * bulge, y: (p.y + tip.y) / 2 - (tip.x - p.x) * bulge };
}
