import { involuteCutter } from '../../geometry/involute/cutter.js';
import { cutterRow } from '../../handbook/involute/cutter-numbers.js';
import { calculation } from '../calculation.js';
import { choice, orElse, whole } from '../quantity.js';

export const cutterNumber = calculation({
  name: 'involute.cutterNumber',
  title: 'Number of the involute cutter',
  given: {
    teeth: whole('z', 'teeth', 12, 100_000),
    series: orElse(choice('series', ['diametralPitch', 'module']), 'diametralPitch'),
  },
  found: {
    number: { unit: '', name: 'cutter number' },
    from: { unit: 'teeth', name: 'fewest teeth it cuts' },
    to: { unit: 'teeth', name: 'most teeth it cuts; none given for the cutter that goes up to the rack' },
  },
  work: (g) => involuteCutter(g.teeth, g.series),
  proofs: [
    {
      of: 'number',
      source: {
        work: 'rose-1887',
        at: 'standard set of eight; the module series reversed is common practice, no source',
      },
      value: (g) => {
        const row = cutterRow(g.teeth)?.number;
        return row === undefined || g.series === 'diametralPitch' ? row : 9 - row;
      },
    },
    {
      of: 'from',
      source: { work: 'rose-1887', at: 'standard set of eight' },
      value: (g) => cutterRow(g.teeth)?.from,
    },
    {
      of: 'to',
      source: { work: 'rose-1887', at: 'standard set of eight' },
      value: (g) => cutterRow(g.teeth)?.to,
    },
  ],
  working: [
    {
      say: 'Look in the set for the range that holds the count. The two series number opposite ways: ask which is stamped.',
    },
  ],
});
