import type { Sensible } from './sensible.js';

export const dividing: Sensible = {
  'dividing.direct': { divisions: 60, notches: '96,144,360' },
  'dividing.simple': { divisions: 60, ratio: 40, circles: '18,39' },
  'dividing.angle': { angle: '35d30m', ratio: 40, circles: '15,16,17,18,19,20' },
  'dividing.compound': {
    divisions: 96,
    ratio: 40,
    plates: '15,16,17,18,19,20;21,23,27,29,31,33;37,39,41,43,47,49',
  },
  'dividing.differential': { divisions: 127, ratio: 40, circles: '15,16,17,18,19,20,21,23,27,29,31,33' },
  'dividing.nearest': { divisions: 96, ratio: 40, circles: '37,39,41,43,47,49', diameter: 76.8 },
  'dividing.tally': { divisions: 60, ratio: 40, circles: '18' },
  'dividing.closing': { divisions: 64, stepErrorArcSeconds: 30, diameter: 51.2 },
  'dividing.diagnose': { divisions: 60, ratio: 40, circle: 18, intendedHoles: 12, closingGapAngle: 30 },
  'dividing.sectorArms': { holes: 12 },
  'dividing.plateError': { holeError: 0.05, plateRadius: 50, wheelRadius: 24 },
};
