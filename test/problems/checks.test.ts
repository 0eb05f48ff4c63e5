import { expect, it } from 'vitest';
import { draw, firstPart, inch, metric } from './kinds.js';

it.each([metric, inch])('a check that measures something else says what, and compares that: $kit', (kit) => {
  const declared = {
    calculation: 'pendulum.length',
    vary: { beatsPerHour: [3600, 5400, 7200] },
    ask: 'How long is it?',
    find: 'length',
    answer: { to: '0.1 mm or 0.01 in', accept: '0.5 mm or 0.02 in' },
  };
  const problem = draw(declared, 'A', { kit });
  const swung = firstPart(problem).checks.find(({ source }) => source.includes('let fall'));
  expect(swung?.value).toBe(`beats an hour of a pendulum so long: ${problem.drawn.beatsPerHour}`);
  // The proof allows a ten-millionth of the beats.
  expect(swung?.agreement).toMatch(/^(?:exactly|to 0\.0{2,}1)$/);
});
