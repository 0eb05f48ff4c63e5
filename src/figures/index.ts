import { InputError } from '../diagnostics/errors.js';
import { checkGiven } from './check-given.js';
import { checkBar } from './drawings/check-bar.js';
import { cutterStamp } from './drawings/cutter-stamp.js';
import { cuttingFigures } from './drawings/cutting/index.js';
import { cuttingPasses } from './drawings/cutting-passes.js';
import { depthForms } from './drawings/depth-forms.js';
import { dividingFigures } from './drawings/dividing/index.js';
import { finishingFigures } from './drawings/finishing/index.js';
import { hump } from './drawings/hump.js';
import { indexPlate } from './drawings/index-plate.js';
import { involuteFigures } from './drawings/involute/index.js';
import { overTravel } from './drawings/over-travel.js';
import { pinionSection } from './drawings/pinion-section.js';
import { pitchCircles } from './drawings/pitch-circles.js';
import { quarterMarks } from './drawings/quarter-marks.js';
import { safetyFigures } from './drawings/safety/index.js';
import { screwsFigures } from './drawings/screws/index.js';
import { settingUpFigures } from './drawings/setting-up/index.js';
import { spacesNotHoles } from './drawings/spaces-not-holes.js';
import { stack } from './drawings/stack.js';
import { templateFigures } from './drawings/templates/index.js';
import { toothForm } from './drawings/tooth-form.js';
import { trainsFigures } from './drawings/trains/index.js';
import { trigonometryFigures } from './drawings/trigonometry/index.js';
import { wheelBlank } from './drawings/wheel-blank.js';
import { wheelsFigures } from './drawings/wheels/index.js';
import type { AnyFigure, Drawing, Figure, FigureStyle } from './figure.js';

export type { Drawing, Figure, FigureDefinition, FigureStyle } from './figure.js';

const all: readonly AnyFigure[] = [
  wheelBlank,
  toothForm,
  pinionSection,
  depthForms,
  cuttingPasses,
  overTravel,
  hump,
  stack,
  indexPlate,
  spacesNotHoles,
  quarterMarks,
  checkBar,
  cutterStamp,
  pitchCircles,
  ...wheelsFigures,
  ...involuteFigures,
  ...dividingFigures,
  ...settingUpFigures,
  ...cuttingFigures,
  ...safetyFigures,
  ...trainsFigures,
  ...finishingFigures,
  ...screwsFigures,
  ...trigonometryFigures,
  ...templateFigures,
];

/** Every figure by name. */
export const figures: ReadonlyMap<string, AnyFigure> = new Map(all.map((figure) => [figure.name, figure]));

/**
 * Draws a figure from the values a lesson gives.
 *
 * @param given lengths in mm, counts, words; a list as an array or as text with commas
 * @throws {InputError} for an unknown figure, a value missing, unknown or out of range, or a page too narrow
 * @example drawFigure('index-plate', { circle: 21, spaces: 15 }, { labelSize: 2.8, units: 'mm', maxWidth: 165 })
 */
export function drawFigure(name: string, given: Record<string, unknown>, style: FigureStyle): Figure {
  return drawingOf(name, given, style);
}

/** The same with what is needed to set it into a larger drawing. */
export function drawingOf(name: string, given: Record<string, unknown>, style: FigureStyle): Drawing {
  const figure = figures.get(name);
  if (!figure) throw new InputError('figure', name, `one of ${[...figures.keys()].join(', ')}`);
  return figure.draw(checkGiven(figure.given, given), style);
}
