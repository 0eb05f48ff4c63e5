/**
 * Sets a hole wrong on its circle and turns the wheel by what that turns the crank.
 *
 * @param holeError mm along the circle of holes, less than half of it
 * @param plateRadius radius of that circle, mm
 * @param ratio turns of the crank for one of the work; 1 for a plate on the spindle
 * @param wheelRadius mm
 * @returns how far the wheel is turned wrong: arc seconds, and mm along its rim
 */
export function plateErrorAtWheel(
  holeError: number,
  plateRadius: number,
  ratio: number,
  wheelRadius: number,
) {
  const along = holeError / plateRadius;
  // The hole as drilled, from the plate's centre; the true one lies at (plateRadius, 0).
  const hole = { x: plateRadius * Math.cos(along), y: plateRadius * Math.sin(along) };
  const turned = Math.atan2(hole.y, hole.x) / ratio;
  const chord = 2 * wheelRadius * Math.sin(turned / 2);
  return {
    angleArcSeconds: (turned * 180 * 3600) / Math.PI,
    atRim: 2 * wheelRadius * Math.asin(chord / (2 * wheelRadius)),
  };
}
