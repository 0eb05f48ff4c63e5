import { angularIndexing } from './angular-indexing.js';
import { compoundIndexing } from './compound-indexing.js';
import { differentialIndexing } from './differential-indexing.js';
import { directDividing } from './direct-dividing.js';
import { holeCircles, manyHoles } from './hole-circles.js';
import { rotaryTables } from './rotary-tables.js';
import { simpleIndexing } from './simple-indexing.js';
import { tallies } from './tallies.js';

export const dividingSheets = [
  directDividing,
  simpleIndexing,
  angularIndexing,
  compoundIndexing,
  differentialIndexing,
  rotaryTables,
  tallies,
  holeCircles,
  manyHoles,
];
