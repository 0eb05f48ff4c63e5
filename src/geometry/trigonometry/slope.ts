import { type Point, turned } from '../curves/point.js';
import { angleBetween, DEGREE } from './angles.js';
import { meet } from './meet.js';

/** A taper's slope: a plain ratio, and angles in degrees. */
export interface Taper {
  /** Change of diameter for each unit of length. */
  readonly taperPerUnit: number;
  /** Length along the axis in which the diameter changes by one. */
  readonly lengthForOne: number;
  /** Between a side and the axis. */
  readonly halfAngle: number;
  /** Between the two sides. */
  readonly includedAngle: number;
}

/**
 * The taper between two diameters, by the cone's own point: where its sides, carried on, meet the axis.
 *
 * @param largeDiameter above the small one; a small one of 0 comes to a point
 */
export function taperOf(largeDiameter: number, smallDiameter: number, length: number): Taper {
  const edge = { x: length, y: largeDiameter / 2 };
  const towards = Math.atan2((largeDiameter - smallDiameter) / 2, length);
  const point = meet({ through: edge, towards }, { through: { x: 0, y: 0 }, towards: 0 });
  const end = { x: length, y: 0 };
  const other = { x: edge.x, y: -edge.y };
  return {
    taperPerUnit: largeDiameter / (length - point.x),
    lengthForOne: (length - point.x) / largeDiameter,
    halfAngle: angleBetween(point, end, edge),
    includedAngle: angleBetween(point, other, edge),
  };
}

/** How far the tailstock is set over, in the unit of the lengths. */
export interface SetOver {
  /** To where the taper's slope, carried on over the whole length of the work, has risen. */
  readonly setOver: number;
  /** To the end of the work itself, which lies along the slope and so reaches a little less far. */
  readonly alongWork: number;
}

/** Turns the work's axis until a side of its taper runs with the bed. */
export function tailstockOver(
  largeDiameter: number,
  smallDiameter: number,
  taperLength: number,
  workLength: number,
): SetOver {
  const slope = Math.atan2((largeDiameter - smallDiameter) / 2, taperLength);
  const abreast = meet(
    { through: { x: 0, y: 0 }, towards: slope },
    { through: { x: workLength, y: 0 }, towards: Math.PI / 2 },
  );
  return { setOver: abreast.y, alongWork: turned({ x: workLength, y: 0 }, slope).y };
}

/** Height of the stack under a sine bar: its rollers stand on the plate and on the stack. @param angle degrees */
export function stackHeight(angle: number, centres: number): number {
  const high: Point = turned({ x: centres, y: 0 }, angle * DEGREE);
  return high.y;
}
