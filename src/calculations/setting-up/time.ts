import { type Cuts, cuttingTime } from '../../geometry/setting-up/time.js';
import { derived } from '../../handbook/record.js';
import { minutesByCounting } from '../../handbook/setting-up/minutes.js';
import { calculation, type Slip } from '../calculation.js';
import { length, number, orElse, whole } from '../quantity.js';
import { toldApart } from '../slips.js';

const minutes = (symbol: string, name: string) => ({ symbol, unit: 'min', name });

const counted = (g: Cuts): number =>
  minutesByCounting(g.teeth, g.passes, g.travel / g.feedPerMin, g.returnMinutes, g.indexMinutes);

const source = derived('minutes added cut by cut: cut, bring back, index');
/** A hundred thousand sums may each be out in the last bit. */
const within = (g: Cuts): number => 1e-9 * Math.max(1, counted(g));

const slips: Readonly<Record<string, Slip>> = {
  oneRound: {
    of: 'minutes',
    formula: 'z*(T/F + q + k)',
    says: 'That is once round. Every pass goes all the way round again.',
  },
  noReturn: {
    of: 'minutes',
    formula: 'n*z*(T/F + k)',
    says: 'You left out bringing the slide back.',
  },
  noIndex: { of: 'minutes', formula: 'n*z*(T/F + q)', says: 'You left out indexing.' },
  indexOnce: {
    of: 'minutes',
    formula: 'n*z*(T/F + q) + z*k',
    says: 'You indexed once for each tooth. Each pass round indexes every tooth again.',
  },
  upsideDown: {
    of: 'minutes',
    formula: 'n*z*(F/T + q + k)',
    says: 'The feed is upside down: time is the travel over the feed.',
  },
  eachBlank: {
    of: 'minutes',
    formula: 'b*n*z*(T/F + q + k)',
    says: 'You multiplied by the blanks. They are cut in one stack, all at once.',
  },
  wholeStack: {
    of: 'minutesPerWheel',
    formula: 'n*z*(T/F + q + k)',
    says: 'That is for the whole stack. Share it between the wheels in it.',
  },
};

export const wheelTime = calculation({
  name: 'cut.wheelTime',
  title: 'Time to cut a wheel',
  given: {
    teeth: whole('z', 'teeth to cut', 1, 2000),
    travel: length('T', 'travel of the slide for one cut', 0.01, 10_000),
    feedPerMin: number('F', 'feed', 'mm/min', 0.1, 100_000),
    returnMinutes: number('q', 'time to bring the slide back', 'min', 0, 600),
    indexMinutes: number('k', 'time to index', 'min', 0, 600),
    passes: orElse(whole('n', 'passes, each once round the wheel', 1, 50), 1),
    blanks: orElse(whole('b', 'blanks in the stack', 1, 1000), 1),
  },
  found: {
    minutes: minutes('M', 'time for the stack'),
    minutesPerWheel: minutes('W', 'time for each wheel of it'),
    perTooth: minutes('P', 'time for each tooth of the stack'),
  },
  work: cuttingTime,
  proofs: [
    { of: 'minutes', source, within, value: counted },
    { of: 'minutesPerWheel', source, within, value: (g) => counted(g) / g.blanks },
    { of: 'perTooth', source, within, value: (g) => counted({ ...g, teeth: 1 }) },
  ],
  working: ['P = n*(T/F + q + k)', 'M = n*z*(T/F + q + k)', 'W = M/b'],
  slips: (g, found) =>
    toldApart(slips, found, {
      z: g.teeth,
      T: g.travel,
      F: g.feedPerMin,
      q: g.returnMinutes,
      k: g.indexMinutes,
      n: g.passes,
      b: g.blanks,
    }),
});
