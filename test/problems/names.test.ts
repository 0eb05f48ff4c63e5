import { expect, it } from 'vitest';
import { FUNCTIONS } from '../../src/formula/formula.js';
import { Names, namesIn } from '../../src/problems/names.js';

it('a lesson may call every function that a formula may', () => {
  for (const called of FUNCTIONS) expect(namesIn(`${called}(teeth)`)).toEqual(['teeth']);
  const names = new Names({ angle: 30, half: 0.5 });
  expect(names.evaluate('sind(angle)')).toBeCloseTo(0.5, 12);
  expect(names.evaluate('asind(half)')).toBeCloseTo(30, 12);
});
