import { isNearer, nearestSpaces } from './angle.js';

/** The nearest movement on one circle, and how far it is out. Above 0 is too far. */
export interface NearestSetting {
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
  readonly stepErrorArcSeconds: number;
  /** After as many moves as divisions. */
  readonly closingErrorArcSeconds: number;
  /** mm along the rim. */
  readonly closingErrorAtRim: number;
}

/**
 * For each circle the movement nearest to ratio/divisions, the closest first and of those equally close the smaller
 * circle; never a movement of nothing. The order is decided in whole numbers.
 *
 * @param diameter of the rim, mm
 */
export function nearestSettings(
  divisions: number,
  ratio: number,
  circles: readonly number[],
  diameter: number,
): NearestSetting[] {
  const misses = circles.map((circle) => {
    const spaces = nearestSpaces(BigInt(ratio * circle), BigInt(divisions));
    return { circle, spaces, over: BigInt(spaces * divisions - ratio * circle) };
  });
  misses.sort((a, b) => (isNearer(a, b) ? -1 : 1));
  return misses.map(({ circle, spaces, over }) => {
    // Divisions × the movement passes a full turn of the work by over spaces, of which there are ratio × circle.
    const closing = Number(over) / (ratio * circle);
    return {
      turns: Math.floor(spaces / circle),
      holes: spaces % circle,
      circle,
      stepErrorArcSeconds: (closing * 1_296_000) / divisions,
      closingErrorArcSeconds: closing * 1_296_000,
      closingErrorAtRim: closing * Math.PI * diameter,
    };
  });
}
