import { type Point, turned } from '../curves/point.js';
import { inv, involutePoint, rollTo } from './involute.js';
import { basicRack } from './rack.js';
import { rackRoot } from './root.js';

/** The involute flanks of a wheel's teeth, so far as they are really there. */
export interface Flanks {
  readonly teeth: number;
  readonly baseRadius: number;
  readonly rootRadius: number;
  readonly tipRadius: number;
  /** Half the angle that a tooth takes of the base circle, its flanks carried on to there, radians. */
  readonly halfToothAtBase: number;
  /** String unwound where the flank begins above the root, and at the tip, radians. */
  readonly from: number;
  readonly to: number;
}

/**
 * The flanks that the basic rack leaves on a wheel, its tooth half a pitch thick.
 *
 * @param teeth 5 to 1000
 * @param module mm
 * @param pressureAngle radians, 10° to 30°
 */
export function wheelFlanks(teeth: number, module: number, pressureAngle: number): Flanks {
  const { addendum, dedendum } = basicRack(pressureAngle);
  const pitchRadius = (module * teeth) / 2;
  const baseRadius = pitchRadius * Math.cos(pressureAngle);
  const tipRadius = pitchRadius + module * addendum;
  return {
    teeth,
    baseRadius,
    rootRadius: pitchRadius - module * dedendum,
    tipRadius,
    halfToothAtBase: Math.PI / (2 * teeth) + inv(pressureAngle),
    from: rackRoot(teeth, module, pressureAngle).roll,
    to: rollTo(baseRadius, tipRadius),
  };
}

/** A place on the side of a space that lies above its middle, the x axis, where so much string is unwound. */
export function spaceSide({ teeth, baseRadius, halfToothAtBase }: Flanks, roll: number): Point {
  return turned(involutePoint(baseRadius, roll), Math.PI / teeth - halfToothAtBase);
}

/** A place on the side of a tooth that lies above its middle, the x axis, where so much string is unwound. */
export function toothSide({ baseRadius, halfToothAtBase }: Flanks, roll: number): Point {
  const { x, y } = involutePoint(baseRadius, roll);
  return turned({ x, y: -y }, halfToothAtBase);
}

/** Where the side of a tooth, carried on down to the base circle, crosses a circle about the wheel's centre. */
export function sideOnCircle(flanks: Flanks, radius: number): Point {
  let [low, high] = [0, flanks.to];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    const { x, y } = toothSide(flanks, middle);
    if (Math.hypot(x, y) < radius) low = middle;
    else high = middle;
  }
  return toothSide(flanks, high);
}
