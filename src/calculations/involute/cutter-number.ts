import { involuteCutter } from '../../geometry/involute/cutter.js';
import { cutterRow } from '../../handbook/involute/cutter-numbers.js';
import { practice } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { choice, orElse, whole } from '../quantity.js';

interface Given {
  readonly teeth: number;
  readonly series: 'diametralPitch' | 'module';
}

const IN_WORDS = {
  diametralPitch: 'the diametral-pitch series',
  module: 'the module series',
} as const;

const REVERSED = practice('the module series numbers the same set the other way about');

/** Where the row is printed. */
const printed = (g: Given) => cutterRow(g.teeth)?.source ?? practice('no row');

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
      source: (g) => (g.series === 'module' ? REVERSED : printed(g)),
      value: (g) => {
        const row = cutterRow(g.teeth)?.number;
        return row === undefined || g.series === 'diametralPitch' ? row : 9 - row;
      },
    },
    { of: 'from', source: printed, value: (g) => cutterRow(g.teeth)?.from },
    { of: 'to', source: printed, value: (g) => cutterRow(g.teeth)?.to },
  ],
  working: (g, { number, from, to }) => {
    const other = g.series === 'module' ? 'diametralPitch' : 'module';
    const range = to === null ? `${from} to the rack` : `${from} to ${to}`;
    return [
      {
        say:
          `${g.teeth} lies in ${range}: No. ${number} in ${IN_WORDS[g.series]}; ` +
          `in ${IN_WORDS[other]} that is No. ${9 - number}.`,
      },
      { say: 'The two series number opposite ways: ask which is stamped.' },
    ];
  },
});
