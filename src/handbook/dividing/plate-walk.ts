/** Holes marked out: few enough that one may be far out of place and still lie between its neighbours. */
const HOLES = 6;

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * Marks out a circle of holes with one of them out of place and steps the pin from the hole before into that one: the
 * wheel is turned by the angle between the two, and should have been by a pitch.
 *
 * @param holeError mm along the circle, at most half its radius
 * @param ratio turns of the plate for one of the wheel
 * @returns radians that the wheel is out when the pin stands in that hole
 */
export function wheelByStepping(holeError: number, plateRadius: number, ratio: number): number {
  const at = (angle: number): Place => ({
    x: plateRadius * Math.cos(angle),
    y: plateRadius * Math.sin(angle),
  });
  const pitch = (2 * Math.PI) / HOLES;
  const [before, wrong] = [at(0), at(pitch + holeError / plateRadius)];
  return (turnedFrom(before, wrong) - pitch) / ratio;
}

/** The angle between two holes at the plate’s centre. */
const turnedFrom = (a: Place, b: Place): number => Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
