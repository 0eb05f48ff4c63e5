import type { ShopCard } from '../../src/sheets/model.js';
import { head, worked } from './class-lessons.js';

const travel = worked('setup.overTravel', { cutterDiameter: 24, depth: 2.36, thickness: 9.5 });
const blank = worked('wheel.blank', { teeth: 60, module: 0.8, convention: '2.76' });

/** The class wheel on the class's own equipment. */
export const card: ShopCard = {
  head,
  job: 'Centre wheel, 60 teeth',
  given: [
    { name: 'teeth', symbol: 'z', value: '60' },
    { name: 'module', symbol: 'm', value: '0.8\u202Fmm' },
    { name: 'cutter', symbol: 'D', value: '24\u202Fmm, form 2.95' },
    { name: 'stack', symbol: 'b', value: '9.5\u202Fmm, 4 blanks' },
  ],
  big: [
    { label: 'Blank diameter', value: '50.21\u202Fmm' },
    { label: 'Depth of cut', value: '2.36\u202Fmm' },
    { label: 'Spaces on the circle', value: '10/15', note: '10 spaces on the 15-hole circle' },
    { label: 'Travel', value: '25.79\u202Fmm' },
  ],
  quarters: [
    { mark: '¼', teeth: '15', angle: '90°' },
    { mark: '½', teeth: '30', angle: '180°' },
    { mark: '¾', teeth: '45', angle: '270°' },
    { mark: '1', teeth: '60', angle: '360°' },
  ],
  lines: [
    { name: 'root diameter', symbol: 'd_f', value: '45.49\u202Fmm' },
    { name: 'holes between the arms', symbol: 'q', value: '11' },
    { name: 'whole turns', symbol: '', value: '0' },
    { name: 'approach', symbol: 'g', value: '7.15\u202Fmm' },
    { name: 'spindle speed', symbol: 'S', value: '800\u202Frev/min' },
    { name: 'dial divisions', symbol: 'N', value: '118' },
  ],
  conventions: ['Blank by the trade allowance, z + 2.76. Dial reads radius.'],
  cautions: [
    'Clamp the spindle before each cut. Hands stay clear of the cutter until it has stopped.',
    'Turn the crank only with the cutter clear of the work.',
  ],
  checks: [...blank.checks.slice(1, 2), ...travel.checks.slice(1, 2)],
};
