import { brass } from './brass.js';
import type { CardKind } from './card.js';
import { centringTest } from './centring-test.js';
import { diagnosis } from './diagnosis/index.js';
import { guards } from './guards.js';
import { readings } from './readings.js';
import { sectorArms } from './sector-arms.js';
import { tally } from './tally.js';

/** Every family of shop cards but the set-up card, which each job has for itself. */
export const shopCards: readonly CardKind[] = [
  sectorArms,
  centringTest,
  tally,
  diagnosis,
  brass,
  guards,
  readings,
];
