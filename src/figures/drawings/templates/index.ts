import type { AnyFigure } from '../../figure.js';
import { crossingTemplate } from './crossing-template.js';
import { cutterProjection } from './cutter-projection.js';
import { degreeDisc } from './degree-disc.js';
import { degreeVernier } from './degree-vernier.js';
import { platePattern } from './plate-pattern.js';
import { printerTest } from './printer-test.js';
import { wheelCheck } from './wheel-check.js';

/** Drawings that are laid on the work or glued to it: each at one scale, whatever the page. */
export const templateFigures: readonly AnyFigure[] = [
  crossingTemplate,
  wheelCheck,
  platePattern,
  cutterProjection,
  degreeDisc,
  degreeVernier,
  printerTest,
];
