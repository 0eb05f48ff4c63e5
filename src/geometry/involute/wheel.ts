import type { Point } from '../curves/point.js';
import { sideOnCircle, toothSide, wheelFlanks } from './flank.js';
import { rackRoot } from './root.js';

/** Every size of an involute wheel cut by the basic rack, mm. */
export interface InvoluteSizes {
  readonly pitchDiameter: number;
  readonly outsideDiameter: number;
  readonly rootDiameter: number;
  readonly baseDiameter: number;
  readonly toothThickness: number;
  readonly depthOfCut: number;
}

/**
 * A wheel as the basic rack generates it, measured: how far the ends of its flanks and the bottom of its spaces lie
 * from the centre, and where its flanks cross the pitch circle. The line of action passes through the pitch point at
 * right angles to the rack's flank, and the base circle touches it.
 *
 * @param teeth 5 to 1000
 * @param module mm
 * @param pressureAngle radians
 */
export function involuteSizes(teeth: number, module: number, pressureAngle: number): InvoluteSizes {
  const pitchRadius = (module * teeth) / 2;
  const flanks = wheelFlanks(teeth, module, pressureAngle);
  const fromCentre = ({ x, y }: Point): number => Math.hypot(x, y);
  const tip = fromCentre(toothSide(flanks, flanks.to));
  const root = fromCentre(rackRoot(teeth, module, pressureAngle).at(0));
  const side = sideOnCircle(flanks, pitchRadius);
  // Two places on the line of action, and how far the wheel's centre lies off it.
  const pitchPoint = { x: pitchRadius, y: 0 };
  const further = { x: pitchRadius - Math.sin(pressureAngle), y: Math.cos(pressureAngle) };
  const off = Math.abs(pitchPoint.x * further.y - pitchPoint.y * further.x);
  return {
    pitchDiameter: 2 * pitchRadius,
    outsideDiameter: 2 * tip,
    rootDiameter: 2 * root,
    baseDiameter: 2 * off,
    toothThickness: 2 * Math.atan2(side.y, side.x) * pitchRadius,
    depthOfCut: tip - root,
  };
}
