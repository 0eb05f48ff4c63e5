import { distance, type Point } from '../curves/point.js';

/** Height at which a cutter's upper face touches a feeler under a gauge that is right for it without, mm. */
export function heightAtTouch(centreHeight: number, cutterThickness: number, feeler: number) {
  const gauge = centreHeight + cutterThickness / 2;
  return { gauge, height: gauge - feeler };
}

/** From where a cutter's lower face touches the top of a blank, through a feeler, down to the blank's axis, mm. */
export function dropToCentre(blankDiameter: number, cutterThickness: number, feeler: number): number {
  const rim = blankDiameter / 2;
  const cutterMiddle = rim + feeler + cutterThickness / 2;
  return cutterMiddle;
}

/**
 * A cutter that travels past the axis of a wheel instead of through it.
 *
 * @param diameter of the wheel where the lean is measured, mm
 * @param offset how far the cutter's middle passes from the axis, mm; less than half the diameter
 * @returns `leanAngle` degrees between the cut and the radius through its mouth, `atRim` mm along the rim, and the
 *   step between two cuts half a turn apart, mm
 */
export function offCentre(diameter: number, offset: number) {
  const radius = diameter / 2;
  const mouth: Point = { x: offset, y: Math.sqrt((radius - offset) * (radius + offset)) };
  const lean = Math.atan2(mouth.x, mouth.y);
  // The work turned half round carries the first cut to the other side of the axis.
  const turnedMouth: Point = { x: -mouth.x, y: mouth.y };
  return {
    leanAngle: (lean * 180) / Math.PI,
    atRim: radius * lean,
    halfTurnStep: distance(mouth, turnedMouth),
  };
}

/** How far the cutter is set over so that it leaves a face that leans so many degrees from the radius, mm. */
export function setOverForFace(diameter: number, faceAngle: number): number {
  const lean = (faceAngle * Math.PI) / 180;
  const tip: Point = { x: 0, y: diameter / 2 };
  const along: Point = { x: Math.sin(lean), y: -Math.cos(lean) };
  // Distance of the axis from the line of the face.
  return Math.abs(tip.x * along.y - tip.y * along.x);
}
