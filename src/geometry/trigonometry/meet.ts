import { type Point, polar } from '../curves/point.js';

/** A line through a place, in a direction: radians anticlockwise from the x axis. */
export interface Line {
  readonly through: Point;
  readonly towards: number;
}

/** Where two lines that are not parallel meet. */
export function meet(first: Line, second: Line): Point {
  const [p, q] = [polar(1, first.towards), polar(1, second.towards)];
  const between = { x: second.through.x - first.through.x, y: second.through.y - first.through.y };
  const along = (between.x * q.y - between.y * q.x) / (p.x * q.y - p.y * q.x);
  return { x: first.through.x + along * p.x, y: first.through.y + along * p.y };
}

/** The line beside another, so far to the left of its direction. */
export function beside({ through, towards }: Line, distance: number): Line {
  const aside = polar(distance, towards + Math.PI / 2);
  return { through: { x: through.x + aside.x, y: through.y + aside.y }, towards };
}
