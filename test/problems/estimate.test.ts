import { expect, it } from 'vitest';
import type { Expected } from '../../src/problems/expected.js';
import { takesNumber } from '../../src/problems/judge.js';
import { blank, draw, faultOf, inch, many, metric } from './kinds.js';

const asked = { ...blank, find: 'outsideDiameter', estimate: { to: '0.5 mm or 0.02 in', accept: '15 %' } };
const takes = (expects: Expected, value: number) => expects.kind === 'number' && takesNumber(expects, value);

it('an estimate is asked first, in a band of its own, for one mark', () => {
  for (const kit of [metric, inch])
    for (const { parts } of many(asked, 40, { kit })) {
      const [rough, exact] = parts;
      expect(parts).toHaveLength(2);
      expect(rough?.marks).toEqual([{ code: 'B1', for: 'independent' }]);
      expect(exact?.marks.map(({ code }) => code)).toEqual(['M1', 'A1']);
      const right = Number.parseFloat(exact?.answer ?? '');
      const [low = 0, high = 0] = (rough?.accepted.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
      expect(low).toBeLessThan(right * 0.9);
      expect(high).toBeGreaterThan(right * 1.1);
      // Both ends of the band are taken, and nothing a step beyond them.
      const step = rough?.expects.kind === 'number' ? rough.expects.step : 0;
      for (const end of [low, high, right]) expect(takes(rough?.expects as Expected, end)).toBe(true);
      for (const end of [low - step, high + step]) expect(takes(rough?.expects as Expected, end)).toBe(false);
      for (const { shown = 0 } of rough?.slips ?? [])
        expect(takes(rough?.expects as Expected, shown)).toBe(false);
    }
});

it('has words of its own where it is given them, and stands before its own part', () => {
  const estimate = { accept: '20 %', to: '1 mm', ask: 'Roughly?' };
  const parts = [
    { ask: 'a', find: 'half', answer: blank.answer },
    { ask: 'b', find: 'left', answer: blank.answer, estimate },
  ];
  expect(draw({ ...blank, answer: undefined, parts }).parts.map(({ ask }) => ask)).toEqual([
    'a',
    'Roughly?',
    'b',
  ]);
  expect(draw(asked).parts.map(({ ask }) => ask)).toEqual([
    'First estimate it, without working it out.',
    'Now work it out.',
  ]);
});

it('is refused where the band holds one value only', () =>
  expect(faultOf({ ...asked, estimate: { to: '5 mm', accept: '1 %' } }).hints.join()).toMatch(
    /narrower than a step/,
  ));
