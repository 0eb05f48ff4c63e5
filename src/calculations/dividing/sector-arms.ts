import { holesVisited } from '../../handbook/dividing/counting.js';
import { derived } from '../../handbook/record.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { whole } from '../quantity.js';

export const sectorArms = calculation({
  name: 'dividing.sectorArms',
  title: 'Holes between the sector arms',
  given: { holes: whole('k', 'spaces to move', 1, 1000) },
  found: {
    holesBetween: { symbol: 'q', unit: 'holes', name: 'holes inside the arms, the pin’s own among them' },
  },
  work: (g) => ({ holesBetween: g.holes + 1 }),
  proofs: [
    {
      of: 'holesBetween',
      source: derived('the pin walked from hole to hole, and every hole it was in collected'),
      value: (g) => holesVisited(g.holes),
    },
  ],
  working: ['q = k + 1'],
  slips: (g) => ({
    fencePost: {
      of: 'holesBetween',
      formula: 'k',
      says: `You left out the hole the pin stands in: ${counted(g.holes, 'space')} ${g.holes === 1 ? 'has' : 'have'} ${g.holes + 1} holes, one at each end.`,
    },
  }),
});
