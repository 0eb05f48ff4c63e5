import { dividingSheets } from './dividing/index.js';
import { screwSheets } from './screws/index.js';
import type { SheetKind } from './sheet.js';
import { trainSheets } from './trains/index.js';
import { turningSheets } from './turning/index.js';
import { wheelSheets } from './wheels/index.js';

/** Every reference sheet, by area of the trade. */
export const referenceSheets: readonly SheetKind[] = [
  ...trainSheets,
  ...wheelSheets,
  ...dividingSheets,
  ...screwSheets,
  ...turningSheets,
];
