import { basicRack } from './rack.js';

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
 * A wheel in mesh with the basic rack, their pitch line and pitch circle touching. The rack's tips reach to the root
 * circle and its roots stand clear of the tips; its pitch line rolls on the pitch circle, so that the tooth is as
 * thick there, along the arc, as the rack's space is wide. The line of action passes through the pitch point at right
 * angles to the rack's flank, and the base circle touches it.
 *
 * @param teeth 1 or more
 * @param module mm
 * @param pressureAngle radians
 */
export function involuteSizes(teeth: number, module: number, pressureAngle: number): InvoluteSizes {
  const { addendum, dedendum } = basicRack(pressureAngle);
  const pitchRadius = (module * teeth) / 2;
  const tip = pitchRadius + module * addendum;
  const root = pitchRadius - module * dedendum;
  // Two places on the line of action, and how far the wheel's centre lies off it.
  const pitchPoint = { x: pitchRadius, y: 0 };
  const further = { x: pitchRadius - Math.sin(pressureAngle), y: Math.cos(pressureAngle) };
  const off = Math.abs(pitchPoint.x * further.y - pitchPoint.y * further.x);
  const rackPitch = Math.PI * module;
  return {
    pitchDiameter: 2 * pitchRadius,
    outsideDiameter: 2 * tip,
    rootDiameter: 2 * root,
    baseDiameter: 2 * off,
    toothThickness: rackPitch / 2,
    depthOfCut: tip - root,
  };
}
