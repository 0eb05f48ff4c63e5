import type { Proportions } from './proportions.js';
import type { Series } from './thread-table.js';

interface Published extends Proportions {
  readonly diameter: number;
  readonly pitch: number;
}

const RADIANS = Math.PI / 180;

/** The general formula over wires solved for the wire that comes out at the outside diameter, mm. */
export function smallestWire({ angle, effective, pitch }: Published): number {
  const half = (angle / 2) * RADIANS;
  return (pitch * (effective + 1 / (2 * Math.tan(half)))) / (1 + 1 / Math.sin(half));
}

/**
 * The wire that touches the flanks where they end, mm: at a flat crest, or where a crest’s rounding begins, which is
 * its radius times (1 - sine of half the angle) below the crest. Half the groove is a quarter pitch on the pitch line.
 */
export function largestWire(series: Series, { angle, effective, pitch, rootRadius }: Published): number {
  const half = (angle / 2) * RADIANS;
  const rounding = series === 'iso' ? 0 : rootRadius * (1 - Math.sin(half));
  const above = effective / 2 - rounding;
  return (2 * pitch * (1 / 4 + above * Math.tan(half))) / Math.cos(half);
}
