import { expect, it } from 'vitest';
import { draw, firstPart } from './kinds.js';

it('keeps a slip of less than a degree, and leaves out one that comes to nought', () => {
  const declared = {
    vary: { teeth: [60] },
    works: { step: { formula: '360/teeth', check: 'step*teeth = 360', unit: '°' } },
    ask: 'How far is a tooth?',
    find: 'step',
    answer: { to: '1′', accept: '1′' },
    slips: {
      small: { formula: 'step/8', says: 'You went one part of eight.' },
      none: { formula: 'step - 6', says: 'You did not move.' },
    },
  };
  expect(firstPart(draw(declared)).slips.map(({ gives }) => gives)).toEqual(['0°\u00A045′']);
});
