import { arcFrom, lengthOf } from '../curves/path.js';
import { distance, type Point, polar } from '../curves/point.js';
import { DEGREE } from './angles.js';

/** What an angle at the centre cuts off a circle, in the unit of the diameter. */
export interface Cut {
  /** Straight across. */
  readonly chord: number;
  /** Along the circle. */
  readonly arc: number;
  /** From the middle of the chord to the middle of the arc. */
  readonly sagitta: number;
}

/** Cuts a circle at two places and measures between them. @param angle at the centre, degrees above 0 and under 360 */
export function cutOff(diameter: number, angle: number): Cut {
  const radius = diameter / 2;
  const turn = angle * DEGREE;
  const [start, end, crown] = [polar(radius, 0), polar(radius, turn), polar(radius, turn / 2)];
  const middle = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 };
  const arc = lengthOf({ start, segments: [arcFrom(start, { x: 0, y: 0 }, turn)] });
  return { chord: distance(start, end), arc, sagitta: distance(middle, crown) };
}

/** A hole of a circle: its place, and its angle from the x axis, degrees from 0 to under 360. */
export interface Hole extends Point {
  readonly angle: number;
}

/** So near to an axis, as a share of the radius, or to a whole turn, in degrees, a hole stands on it. */
const DUST = 1e-12;

/**
 * Holes spaced evenly round a circle, anticlockwise from the first.
 *
 * @param startAngle of the first hole, degrees anticlockwise from the x axis
 * @param centre where the centre of the circle stands
 */
export function holeCircle(count: number, diameter: number, startAngle: number, centre: Point): Hole[] {
  const radius = diameter / 2;
  return Array.from({ length: count }, (_, i) => {
    const angle = withinATurn(startAngle + (360 * i) / count);
    const { x, y } = polar(radius, angle * DEGREE);
    return { x: centre.x + onAxis(x, radius), y: centre.y + onAxis(y, radius), angle };
  });
}

const onAxis = (along: number, radius: number): number => (Math.abs(along) < DUST * radius ? 0 : along);

function withinATurn(angle: number): number {
  const rest = ((angle % 360) + 360) % 360;
  return 360 - rest < DUST * 360 ? 0 : rest;
}
