import { crossing } from './crossing.js';
import { cutterForm } from './cutter-form.js';
import { degreeDisc } from './degree-disc.js';
import { divisionPlate } from './division-plate.js';
import { printerTest } from './printer-test.js';
import type { TemplateKind } from './template.js';
import { wheelCheck } from './wheel-check.js';

/** Every template, the printer's own test first. */
export const templates: readonly TemplateKind[] = [
  printerTest,
  crossing,
  wheelCheck,
  divisionPlate,
  cutterForm,
  degreeDisc,
];
