import { InputError } from '../../diagnostics/errors.js';
import type { Drawing, FigureStyle } from '../figure.js';

/** The scales of ISO 5455 that a bench sheet needs; 1 is true scale. */
export const ENLARGEMENTS = [100, 50, 20, 10, 5, 2, 1] as const;
export const REDUCTIONS = [1, 0.5, 0.2, 0.1] as const;

/** A scale as the caption says it. */
export function scaleName(scale: number): string {
  if (scale === 1) return 'true scale';
  return scale > 1 ? `${scale} : 1` : `1 : ${Math.round(1 / scale)}`;
}

/**
 * The first of some scales, or other ways to draw a figure, at which it is legible and fits.
 *
 * @param draw gives nothing where the lettering would not fit the drawing that way
 * @throws {InputError} when the page is too narrow for all of them, or the lettering too large
 */
export function firstThatFits<Way>(
  ways: readonly Way[],
  style: FigureStyle,
  draw: (way: Way) => Drawing | undefined,
): Drawing {
  let narrowest = Infinity;
  for (const way of ways) {
    const drawing = draw(way);
    if (drawing && drawing.width <= style.maxWidth) return drawing;
    narrowest = Math.min(narrowest, drawing?.width ?? Infinity);
  }
  if (Number.isFinite(narrowest)) throw tooNarrow(style.maxWidth, narrowest);
  throw new InputError(
    'size of the lettering',
    `${style.labelSize} mm`,
    'smaller lettering for parts so small',
  );
}

/** @throws {InputError} when a figure of one fixed scale does not fit */
export function fitting({ maxWidth }: FigureStyle, drawing: Drawing): Drawing {
  if (drawing.width <= maxWidth) return drawing;
  throw tooNarrow(maxWidth, drawing.width);
}

function tooNarrow(maxWidth: number, needed: number): InputError {
  return new InputError(
    'width of the page',
    `${maxWidth} mm`,
    `at least ${Math.ceil(needed)} mm for this figure`,
  );
}

const LADDER: readonly number[] = [...ENLARGEMENTS, ...REDUCTIONS.slice(1), 0.05, 0.02, 0.01];

/** Scales at which a part of some size comes out near a size on the paper, mm; the nearest first. */
export function scalesNear(size: number, wanted: number): number[] {
  const off = (scale: number): number => Math.abs(Math.log((size * scale) / wanted));
  return LADDER.filter((scale) => off(scale) < 1.7).toSorted((a, b) => off(a) - off(b));
}
