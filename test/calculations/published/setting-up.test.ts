import { describe } from 'vitest';
import { near } from './near.js';

describe('setting up and cutting', () => {
  // The chord of a circle by Pythagoras; the slab-milling value is Groover's (from memory): 0.98 in.
  near(
    'setup.overTravel',
    { cutterDiameter: '3.5in', depth: '0.3in', thickness: 10 },
    'approach',
    0.98 * 25.4,
    0.01,
  );
  near('setup.hump', { cutterDiameter: 24, short: 5 }, 'hump', 12 - Math.sqrt(119), 1e-9);
  near('setup.stack', { slideTravel: 30, cutterDiameter: 10, depth: 2, blankThickness: 2 }, 'blanks', 10, 0);
  // University instrument shop speed table (read): 1/4 in at 300 ft/min and 3/8 in at 120 ft/min.
  near('cut.spindleSpeed', { cuttingSpeed: 91.44, diameter: '1/4in' }, 'revPerMin', 4584, 0.5);
  near('cut.spindleSpeed', { cuttingSpeed: 36.576, diameter: '3/8in' }, 'revPerMin', 1222, 0.5);
});
