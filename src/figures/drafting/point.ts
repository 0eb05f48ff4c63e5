/** A place on the paper: mm, x to the right, y down, as SVG has it. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export const point = (x: number, y: number): Point => ({ x, y });

/** The place at a distance from a centre on a bearing: radians, clockwise, 0 at twelve o'clock. */
export function onBearing(radius: number, bearing: number, centre: Point = { x: 0, y: 0 }): Point {
  return { x: centre.x + radius * Math.sin(bearing), y: centre.y - radius * Math.cos(bearing) };
}

/** A bearing as SVG counts angles: clockwise from three o'clock. */
export const bearingToAngle = (bearing: number): number => bearing - Math.PI / 2;

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

export const along = (a: Point, b: Point, share: number): Point => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
});

export const scaled = (p: Point, by: number): Point => ({ x: p.x * by, y: p.y * by });
