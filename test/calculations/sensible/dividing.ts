import type { Sensible } from './sensible.js';

export const dividing: Sensible = {
  'dividing.simple': { divisions: 60, ratio: 40, circles: '18,39' },
  'dividing.tally': { divisions: 60, ratio: 40, circles: '18' },
  'dividing.sectorArms': { holes: 12 },
};
