import type { Sensible } from './sensible.js';

export const involute: Sensible = {
  'involute.wheel': { teeth: 30, module: 2 },
  'involute.function': { angle: 20 },
  'involute.span': { teeth: 40, module: 1 },
  'involute.overPins': { teeth: 39, module: 1 },
  'involute.undercut': {},
  'involute.cutterNumber': { teeth: 30 },
  'tooth.chordal': { teeth: 12, module: 2 },
};
