import type { Pen } from '../pen.js';
import { distance, type Point } from './point.js';

/** Half an arrowhead's width over its length. */
const SLENDERNESS = 0.17;

/** Length of an arrowhead, mm: in step with the lettering, within reason. */
export const arrowLength = (pen: Pen): number => Math.min(3.2, Math.max(2, pen.style.labelSize * 0.75));

/** A closed, filled arrowhead (ISO 129-1) with its point at `tip`, its shaft coming from `from`. */
export function arrowhead(pen: Pen, tip: Point, from: Point): void {
  const length = arrowLength(pen);
  const reach = distance(tip, from);
  const ux = (tip.x - from.x) / reach;
  const uy = (tip.y - from.y) / reach;
  const back = { x: tip.x - ux * length, y: tip.y - uy * length };
  const half = length * SLENDERNESS;
  pen.solid([
    tip,
    { x: back.x - uy * half, y: back.y + ux * half },
    { x: back.x + uy * half, y: back.y - ux * half },
  ]);
}

/** A thin line that ends in an arrowhead; with more than two places, a bent one. */
export function arrow(pen: Pen, ...places: readonly Point[]): void {
  pen.line('dimension', ...places);
  const tip = places.at(-1);
  const from = places.at(-2);
  if (tip && from) arrowhead(pen, tip, from);
}
