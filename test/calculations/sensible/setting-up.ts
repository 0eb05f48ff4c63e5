import type { Sensible } from './sensible.js';

export const settingUp: Sensible = {
  'size.convert': { length: 7.2 },
  'scale.reading': { divisions: 27, division: 1, line: 17, lines: 50 },
  'setup.cutterHeight': { centreHeight: 95.25, cutterThickness: 0.53 },
  'setup.centreFromTouch': { blankDiameter: 50.208, cutterThickness: 2.5 },
  'setup.centreError': { diameter: 48, halfTurnStep: 0.16 },
  'setup.overTravel': { cutterDiameter: 24, depth: 2.36, thickness: 9.5 },
  'setup.hump': { cutterDiameter: 24, short: 3 },
  'setup.stack': { slideTravel: 60, cutterDiameter: 24, depth: 2.36, blankThickness: 2 },
  'setup.passes': { depth: 2.36, largestPass: 0.9, dialPerDivision: 0.02 },
  'cut.spindleSpeed': { cuttingSpeed: 60, diameter: 24 },
  'cut.surfaceSpeed': { revPerMin: 800, diameter: 24 },
  'cut.feed': { revPerMin: 800, cutterTeeth: 12, feedPerTooth: 0.02 },
  'cut.wheelTime': {
    teeth: 60,
    travel: 25.8,
    feedPerMin: 40,
    returnMinutes: 0.2,
    indexMinutes: 0.3,
  },
  'cut.toothFrequency': { revPerMin: 800, cutterTeeth: 12 },
  'escape.offset': { diameter: 30, faceAngle: 10 },
};
