import { derived } from '../../handbook/record.js';
import { hoursByLeaves } from '../../handbook/trains/leaf-count.js';
import { calculation } from '../calculation.js';
import { number, whole } from '../quantity.js';
import { remembered } from '../remembered.js';

interface DurationGiven {
  readonly wheel: number;
  readonly pinion: number;
  readonly turns: number;
}

const byLeaves = derived('teeth of the great wheel passed one by one, and the turns of the pinion counted');
const passed = remembered((g: DurationGiven) => hoursByLeaves(g.wheel, g.pinion, g.turns));

export const duration = calculation({
  name: 'train.duration',
  title: 'How long the great wheel drives',
  given: {
    wheel: whole('z', 'teeth of the great wheel', 6, 1000),
    pinion: whole('n', 'leaves of the pinion that turns once an hour', 4, 200),
    turns: number('w', 'turns of the great wheel', 'turns', 0.1, 1000),
  },
  found: {
    hours: { symbol: 'H', unit: 'h', name: 'hours' },
    days: { symbol: 'd', unit: 'days', name: 'days' },
  },
  work: (g) => {
    const teethPassed = g.turns * g.wheel;
    return { hours: teethPassed / g.pinion, days: teethPassed / (24 * g.pinion) };
  },
  proofs: [
    { of: 'hours', formula: 'train-hours' },
    {
      of: 'hours',
      source: byLeaves,
      value: (g) => passed(g).hours,
      within: (g) => 1e-12 * g.turns * g.wheel,
    },
    { of: 'days', formula: 'train-days' },
    { of: 'days', source: byLeaves, value: (g) => passed(g).days, within: (g) => 1e-12 * g.turns * g.wheel },
  ],
  working: ['H = w*z/n', 'd = H/24'],
  slips: {
    upsideDown: {
      of: 'hours',
      formula: 'w*n/z',
      says: 'You put the pinion over the wheel. The great wheel turns slowly: many hours to a turn.',
    },
    oneTurn: { of: 'hours', formula: 'z/n', says: 'That is one turn of the great wheel; count them all.' },
    turnsOnly: {
      of: 'hours',
      formula: 'w',
      says: 'Those are turns of the great wheel. The pinion turns once an hour, not the great wheel.',
    },
    hoursAsDays: { of: 'days', formula: 'H', says: 'Those are hours; there are 24 to the day.' },
    halfDays: {
      of: 'days',
      formula: 'H/12',
      says: 'You took twelve hours to the day: the dial goes round twice.',
    },
  },
});
