import { inches, sixtyFourths } from '../../geometry/setting-up/sizes.js';
import { derived } from '../../handbook/record.js';
import { linesTo } from '../../handbook/setting-up/rule.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length } from '../quantity.js';

const byLines = derived('lines of a rule in sixty-fourths, laid off one by one');

export const sizeConvert = calculation({
  name: 'size.convert',
  title: 'A length in millimetres, inches and sixty-fourths',
  given: { length: length('L', 'length', 0.001, 2000) },
  found: {
    inches: { symbol: 'y', unit: 'in', name: 'inches' },
    sixtyFourths: { symbol: 'k', unit: '', name: 'sixty-fourths of an inch, the nearest count' },
    over: mm('e', 'what those are over the length; less than nought for under'),
  },
  work: (g) => {
    const { count, over } = sixtyFourths(g.length);
    return { inches: inches(g.length), sixtyFourths: count, over };
  },
  proofs: [
    { of: 'inches', formula: 'inches' },
    { of: 'sixtyFourths', source: byLines, value: (g) => linesTo(g.length).count },
    { of: 'over', source: byLines, value: (g) => linesTo(g.length).over, within: 1e-6 },
  ],
  working: ['y = L/25.4', 'e = 25.4*k/64 - L'],
  slips: {
    times: {
      of: 'inches',
      formula: '25.4*L',
      says: 'You multiplied. An inch is longer than a millimetre, so there are fewer of them.',
    },
    tenth: { of: 'inches', formula: 'L/2.54', says: 'You divided by 2.54: that is centimetres to the inch.' },
  },
});
