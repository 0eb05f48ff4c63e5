import type { Sensible } from './sensible.js';

export const screws: Sensible = {
  'thread.form': { series: 'iso', size: 'M6' },
  'thread.tappingDrill': { series: 'iso', size: 'M6', base: 'external', drills: '4.8,5,5.1,5.2,5.5' },
  'thread.overWires': { series: 'iso', size: 'M10' },
  'screwcut.changeWheels': { pitch: 1, leadPitch: 3, wheels: '20,25,30,35,40,45,50,55,60,65,127' },
};
