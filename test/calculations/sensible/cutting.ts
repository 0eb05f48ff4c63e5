import type { Sensible } from './sensible.js';

export const cutting: Sensible = {
  'cutter.form': { teeth: 60, leaves: 8, module: 0.8 },
  'cut.simulate': { teeth: 60, leaves: 8, module: 0.8 },
};
