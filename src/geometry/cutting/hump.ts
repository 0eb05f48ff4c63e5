import { Clipper64, ClipType, FillRule, type Paths64 } from 'clipper2-ts';
import { polar } from '../curves/point.js';

/**
 * The bottom of a space along the face of the wheel, cut by a round cutter whose axis stops short of the far face: the
 * cutter's path taken from the section, and the metal left at that face measured.
 *
 * @param cutterDiameter mm
 * @param short from the cutter's axis at the end of its travel to the far face, mm; less than its radius
 * @returns height of the root at the far face above the rest, mm, within a ten-thousandth of the diameter
 */
export function humpCut(cutterDiameter: number, short: number): number {
  const unit = cutterDiameter * 1e-7;
  const radius = cutterDiameter / 2;
  const grid = (x: number, y: number) => ({ x: Math.round(x / unit), y: Math.round(y / unit) });
  // The root is at height 0, the far face at x 0; the metal reaches the cutter's axis and no higher.
  const before = -3 * radius;
  const metal = [grid(before, -radius), grid(0, -radius), grid(0, radius), grid(before, radius)];
  const nose = Array.from({ length: 2001 }, (_, i) => polar(radius, -Math.PI / 2 + (Math.PI * i) / 2000));
  const path = [
    grid(before - radius, 0),
    ...nose.map(({ x, y }) => grid(x - short, y + radius)),
    grid(before - radius, 2 * radius),
  ];
  const engine = new Clipper64();
  engine.addSubject([metal]);
  engine.addClip([path]);
  const left: Paths64 = [];
  engine.execute(ClipType.Difference, FillRule.NonZero, left);
  const atFace = left.flat().filter(({ x, y }) => x === 0 && y > -radius / unit);
  return Math.max(...atFace.map(({ y }) => y)) * unit;
}
