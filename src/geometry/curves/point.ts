/** A place in the plane, x right and y up; lengths mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The place at a radius and an angle about the origin, radians anticlockwise from the x axis. */
export const polar = (radius: number, angle: number): Point => ({
  x: radius * Math.cos(angle),
  y: radius * Math.sin(angle),
});

/** A place turned about the origin, radians anticlockwise. */
export function turned({ x, y }: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

/** A place mirrored in the x axis. */
export const mirrored = ({ x, y }: Point): Point => ({ x, y: -y });
