import { distance, type Point } from '../curves/point.js';

/** A straight-sided arm; lengths mm. Its widths are across the places where its sides meet the two circles. */
export interface Arm {
  readonly rimRadius: number;
  readonly hubRadius: number;
  readonly widthAtRim: number;
  readonly widthAtHub: number;
}

/** One side of an arm that lies along the x axis: the side above it. */
export interface ArmSide {
  readonly atHub: Point;
  readonly atRim: Point;
  /** Unit steps along the side from hub to rim, and from the side away from the arm. */
  readonly along: Point;
  readonly out: Point;
  /** How far above the axis of the wheel the side passes, mm. */
  readonly past: number;
}

/** The place on a circle so far above the x axis, on the right. */
const onCircle = (radius: number, y: number): Point => ({ x: Math.sqrt((radius - y) * (radius + y)), y });

/** The upper side of an arm along the x axis. Each width is less than the diameter it is measured at. */
export function armSide({ rimRadius, hubRadius, widthAtRim, widthAtHub }: Arm): ArmSide {
  const atHub = onCircle(hubRadius, widthAtHub / 2);
  const atRim = onCircle(rimRadius, widthAtRim / 2);
  const length = distance(atHub, atRim);
  const along = { x: (atRim.x - atHub.x) / length, y: (atRim.y - atHub.y) / length };
  const out = { x: -along.y, y: along.x };
  return { atHub, atRim, along, out, past: out.x * atHub.x + out.y * atHub.y };
}

/** Angle of a place about the axis, radians. */
export const angleOf = ({ x, y }: Point): number => Math.atan2(y, x);

/** Half the taper of an arm, degrees: how far each side leans in towards the rim; less than 0 where it widens. */
export const taperHalfAngle = (arm: Arm): number => (-angleOf(armSide(arm).along) * 180) / Math.PI;

/**
 * Diameters of pegs on the arm's middle line, at some distances from the axis, that a rule along the arm's side
 * touches; mm. Not above 0 where the sides have met before they come to the peg.
 */
export function pegDiameters(arm: Arm, pegRadii: readonly number[]): number[] {
  const { out, past } = armSide(arm);
  return pegRadii.map((radius) => 2 * (past - out.x * radius));
}
