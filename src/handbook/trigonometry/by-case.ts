import { evaluateFormula } from '../../formula/formula.js';
import { trigonometryFormulas as formulas } from '../formulas/trigonometry.js';
import type { Citation } from '../record.js';

/** A published value, with the formula's source. */
export interface Published {
  readonly value: number;
  readonly source: Citation;
}

function published(id: keyof typeof formulas, scope: Readonly<Record<string, number>>): Published {
  const { formula, source } = formulas[id];
  return { value: evaluateFormula(formula, scope), source };
}

/** Dovetail as given: width of the open face, height, roller, mm; angle degrees. */
interface Dovetail {
  readonly kind: 'male' | 'female';
  readonly width: number;
  readonly angle: number;
  readonly rollerDiameter: number;
  readonly depth: number;
}

const letters = (d: Dovetail) => ({ W: d.width, A: d.angle, D: d.rollerDiameter, h: d.depth });

/** Measurement over or between rollers, mm, by the formula for the kind. */
export const dovetailMeasurement = (d: Dovetail): Published => published(`dovetail-${d.kind}`, letters(d));

/** Width from corner to corner, mm, by the formula for the kind. */
export const dovetailCorners = (d: Dovetail): Published =>
  published(`dovetail-${d.kind}-corners`, letters(d));

/** Across flats of a polygon on a round, mm; for odd sides, from a flat to the corner opposite. */
export const acrossFlats = (diameter: number, sides: number): Published =>
  published(sides % 2 === 0 ? 'across-flats' : 'flat-to-corner', { D: diameter, N: sides });
