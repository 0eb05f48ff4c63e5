import type { FigureStyle } from '../../src/figures/figure.js';
import { areas } from './areas/index.js';

/** How a handout on A4 asks for its figures. */
export const handout: FigureStyle = { labelSize: 2.8, units: 'mm', maxWidth: 165 };

/** The class wheel of 60 teeth and its 8-leaf pinion, module 0.8, as each figure is given them. */
export const classWheel: Readonly<Record<string, Record<string, unknown>>> = {
  ...Object.fromEntries(Object.entries(areas).map(([name, { typical }]) => [name, typical])),
  'wheel-blank': {
    teeth: 60,
    module: 0.8,
    outsideDiameter: 50.208,
    pitchDiameter: 48,
    rootDiameter: 45.488,
  },
  'tooth-form': { teeth: 60, leaves: 8, module: 0.8, addendum: 1.104, dedendum: 1.256, flankRadius: 1.544 },
  'pinion-section': {
    leaves: 8,
    module: 0.8,
    outsideDiameter: 7.768,
    pitchDiameter: 6.4,
    rootDiameter: 3.36,
    leafThickness: 0.84,
    tipRadius: 0.84,
  },
  'depth-forms': { module: 0.8 },
  'cutting-passes': { depth: 2.36, passes: '0.9, 0.9, 0.56' },
  'over-travel': { cutterDiameter: 24, depth: 2.36, thickness: 9.5 },
  hump: { cutterDiameter: 24, short: 3, hump: 0.381 },
  stack: { blankThickness: 2, blanks: 4, backing: 1.5, approach: 7.146, slideTravel: 60 },
  'index-plate': { circle: 21, spaces: 15 },
  'spaces-not-holes': {},
  'quarter-marks': { teeth: 60 },
  'check-bar': { length: 100 },
  'cutter-stamp': { module: 0.8, form: 2.95 },
  'pitch-circles': { teeth: 60, leaves: 8, module: 0.8 },
};
