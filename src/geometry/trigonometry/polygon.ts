import { distance, type Point, polar } from '../curves/point.js';

/** A regular polygon filed or milled on a round bar, its corners left on the round; in the bar's unit. */
export interface Flats {
  /** From a flat straight across: to the flat opposite, or to the corner opposite where the sides are odd. */
  readonly acrossFlats: number;
  /** What comes off the round for each flat. */
  readonly depthOfFlat: number;
  readonly flatWidth: number;
}

/** Sets the corners out on the round and measures. @param sides 3 or more */
export function flatsOnRound(diameter: number, sides: number): Flats {
  const radius = diameter / 2;
  // The first flat stands upright on the right, so that across it is along the x axis.
  const corners: Point[] = Array.from({ length: sides }, (_, i) =>
    polar(radius, ((2 * i - 1) * Math.PI) / sides),
  );
  const [first = { x: 0, y: 0 }, second = first] = corners;
  const flat = (first.x + second.x) / 2;
  return {
    acrossFlats: flat - Math.min(...corners.map(({ x }) => x)),
    depthOfFlat: radius - flat,
    flatWidth: distance(first, second),
  };
}
