import type { Sensible } from './sensible.js';

export const settingUp: Sensible = {
  'setup.overTravel': { cutterDiameter: 24, depth: 2.36, thickness: 9.5 },
  'setup.hump': { cutterDiameter: 24, short: 3 },
  'setup.stack': { slideTravel: 60, cutterDiameter: 24, depth: 2.36, blankThickness: 2 },
  'setup.passes': { depth: 2.36, largestPass: 0.9, dialPerDivision: 0.02 },
  'cut.spindleSpeed': { cuttingSpeed: 60, diameter: 24 },
};
