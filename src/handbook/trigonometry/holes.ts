const QUARTERS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** A hole's place, and the direction in which it lies from the centre. */
export interface SetOutHole {
  readonly x: number;
  readonly y: number;
  /** East and north of the centre, as parts of the radius. */
  readonly east: number;
  readonly north: number;
}

/**
 * Coordinates of a hole circle, x = r cos θ and y = r sin θ, the angle first brought into half a quarter turn by
 * quadrants, as a table of sines is used.
 *
 * @param startAngle of the first hole, degrees anticlockwise from the x axis
 * @param shift added to both coordinates: the radius for a datum at the left and lower edges
 */
export function holesByQuadrants(
  count: number,
  diameter: number,
  startAngle: number,
  shift: number,
): SetOutHole[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (startAngle * count + 360 * i) / count;
    const quarter = Math.round(angle / 90);
    const rest = ((angle - 90 * quarter) * Math.PI) / 180;
    const [c, s] = QUARTERS[((quarter % 4) + 4) % 4] ?? QUARTERS[0];
    const east = c * Math.cos(rest) - s * Math.sin(rest);
    const north = s * Math.cos(rest) + c * Math.sin(rest);
    return { x: shift + (diameter / 2) * east, y: shift + (diameter / 2) * north, east, north };
  });
}
