import { describe, expect, it } from 'vitest';
import type { Problem } from '../../src/problems/problem.js';
import { blank, draw, firstPart, many } from './kinds.js';

const steps = {
  ...blank,
  works: {
    ring: { formula: 'pi*outsideDiameter', check: 'ring/pi = outsideDiameter', unit: 'mm' },
  },
  find: 'ring',
};
const indexing = {
  calculation: 'dividing.simple',
  vary: { divisions: '42..144' },
  keep: 'possible and turns = 0',
  ask: 'Set it.',
  find: 'settings',
};

const shownOf = (problem: Problem) => {
  const { shown } = firstPart(problem);
  return shown?.kind === 'working' ? shown.lines : [];
};
/** Figures of all that is printed, formulas aside. */
const figures = (problem: Problem): number[] =>
  (
    JSON.stringify(shownOf(problem))
      .replaceAll(/"(?:formula|left)":"[^"]*"/g, '')
      .match(/\d+(?:\.\d+)?/g) ?? []
  ).map(Number);

describe('a working that fades', () => {
  it('has one blank, the last result', () => {
    const lines = shownOf(draw(steps, 'A', { fade: 'one blank' }));
    expect(lines).toHaveLength(2);
    expect(lines[0]).toHaveProperty('result');
    expect(lines[1]).toMatchObject({ left: 'ring', formula: 'ring = pi*d_a' });
    expect(lines[1]).toHaveProperty('numbers');
    expect(lines[1]).not.toHaveProperty('result');
  });

  it('has its last steps blank: half of several; of one its numbers and result', () => {
    const [first, last] = shownOf(draw(steps, 'A', { fade: 'last steps blank' }));
    expect(first).toHaveProperty('result');
    expect(last).toEqual({ left: 'ring' });
    const single = shownOf(draw({ ...blank, find: 'outsideDiameter' }, 'A', { fade: 'last steps blank' }));
    expect(single).toEqual([{ left: 'd_a', formula: 'd_a = m*(z + 2.76)' }]);
  });

  it('is bare, or belongs to the example, else', () => {
    for (const fade of ['bare', 'worked'] as const)
      expect(firstPart(draw(steps, 'A', { fade })).shown).toBeUndefined();
  });

  it.each(['one blank', 'last steps blank'] as const)('tells no answer, %s', (fade) => {
    for (const problem of many(steps, 60, { fade })) {
      const answer = Number.parseFloat(firstPart(problem).answer);
      for (const figure of figures(problem)) expect(Math.abs(figure - answer)).toBeGreaterThan(0.005);
    }
    for (const problem of many(indexing, 60, { fade })) {
      const { expects } = firstPart(problem);
      const holes = expects.kind === 'moves' ? expects.moves.map((move) => move.holes) : [];
      expect(shownOf(problem)).toHaveLength(1);
      for (const figure of figures(problem)) expect(holes).not.toContain(figure);
    }
  });

  it('tells no answer of an earlier part in a later one', () => {
    const parts = {
      ...blank,
      answer: undefined,
      parts: [
        { ask: 'a', find: 'outsideDiameter', answer: blank.answer },
        { ask: 'b', find: 'half', answer: blank.answer },
      ],
    };
    for (const problem of many(parts, 40, { fade: 'one blank' })) {
      const first = Number.parseFloat(firstPart(problem).answer);
      const text = JSON.stringify(problem.parts[1]?.shown).replaceAll(/"(?:formula|left)":"[^"]*"/g, '');
      for (const figure of (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number))
        expect(Math.abs(figure - first)).toBeGreaterThan(0.005);
    }
  });

  it('prints of a decision the rule, and not what it comes to', () => {
    const decision = {
      vary: { a: '10..20', b: '10..20' },
      works: { fits: { decide: 'a <= b', check: 'b - a >= 0', words: ['fits', 'does not'] } },
      ask: 'Does it fit?',
      find: 'fits',
    };
    const { shown } = firstPart(draw(decision, 'A', { fade: 'one blank' }));
    expect(shown).toEqual({ kind: 'working', numbered: false, lines: [{ say: 'a ≤ b:', blank: true }] });
  });
});
