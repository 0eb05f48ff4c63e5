import type { AnyFigure } from '../../figure.js';
import { cutBesideRight } from './cut-beside-right.js';
import { cutterForm } from './cutter-form.js';
import { simulatedSector } from './simulated-sector.js';
import { simulatedWheels } from './simulated-wheels.js';

export const cuttingFigures: readonly AnyFigure[] = [
  cutterForm,
  simulatedWheels,
  simulatedSector,
  cutBesideRight,
];
