import { distance, type Point, polar } from '../curves/point.js';

/** What a pinion's leaves are made of, each in modules. */
export interface LeafForm {
  readonly addendum: number;
  readonly leafThickness: number;
  /** Of the arc from pitch circle to tip, on each side. */
  readonly tipRadius: number;
}

/** The driven side of a leaf about the pinion's centre: a radial flank up to the pitch circle, then an arc to the tip. */
export interface LeafSide {
  readonly pitchRadius: number;
  readonly tipRadius: number;
  /** Half the angle the leaf takes of the pitch circle, radians: from its flank to its middle. */
  readonly halfAngle: number;
  /** The arc: its radius, and its centre in a frame whose x axis is the flank, the leaf's metal above it. */
  readonly arcRadius: number;
  readonly arcCentre: Point;
  /** How far the side lies back behind the line of its flank at a radius up to the tip's, radians. */
  readonly backAt: (radius: number) => number;
}

/**
 * The arc passes through the flank's end on the pitch circle and through the tip on the leaf's middle.
 *
 * @param leaves 5 or more
 * @param module mm; lengths come out in its unit
 * @throws {RangeError} when the arc is too small to reach from pitch circle to tip
 */
export function leafSide(leaves: number, form: LeafForm, module = 1): LeafSide {
  const pitchRadius = (module * leaves) / 2;
  const tipRadius = pitchRadius + module * form.addendum;
  const halfAngle = form.leafThickness / leaves;
  const arcRadius = module * form.tipRadius;
  const [corner, tip] = [polar(pitchRadius, 0), polar(tipRadius, halfAngle)];
  const chord = distance(corner, tip);
  if (arcRadius < chord / 2)
    throw new RangeError('the tip’s arc is too small to reach from the pitch circle');
  const rise = Math.sqrt(arcRadius ** 2 - chord ** 2 / 4) / chord;
  const arcCentre = {
    x: (corner.x + tip.x) / 2 - (tip.y - corner.y) * rise,
    y: (corner.y + tip.y) / 2 + (tip.x - corner.x) * rise,
  };
  const reach = Math.hypot(arcCentre.x, arcCentre.y);
  const bearing = Math.atan2(arcCentre.y, arcCentre.x);
  const backAt = (radius: number): number => {
    if (radius <= pitchRadius) return 0;
    const cosine = (radius ** 2 + reach ** 2 - arcRadius ** 2) / (2 * radius * reach);
    return bearing - Math.acos(Math.min(1, cosine));
  };
  return { pitchRadius, tipRadius, halfAngle, arcRadius, arcCentre, backAt };
}
