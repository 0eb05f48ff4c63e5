import { describe, expect, it } from 'vitest';
import { blank, draw, many } from './kinds.js';

const to = blank.answer;
const chain = {
  ...blank,
  answer: undefined,
  parts: [
    { ask: 'a', find: 'outsideDiameter', answer: to },
    {
      ask: 'b',
      find: 'half',
      answer: to,
      slips: { whole: { formula: 'outsideDiameter', says: 'Not halved.' } },
    },
    { ask: 'c', find: 'left', answer: to },
  ],
};

describe('what follows from an earlier slip', () => {
  it('is worked from the wrong value by the right rules, for every slip and every later part', () => {
    for (const { parts, drawn } of many(chain, 25)) {
      const [a, b, c] = parts;
      const { teeth = 0, module = 0 } = drawn as { teeth: number; module: number };
      const involute = module * (teeth + 2);
      const from = (part: number, list = c?.follows) => (list ?? []).filter((line) => line.part === part);
      expect(a?.follows).toEqual([]);
      expect(b?.follows).toHaveLength(a?.slips.length ?? 0);
      expect(from(0)).toHaveLength(a?.slips.length ?? 0);
      expect(from(1)).toHaveLength(1);
      const line = b?.follows?.find(({ gives }) => gives === `${involute.toFixed(2)}\u202Fmm`);
      expect(Number.parseFloat(line?.answer ?? '')).toBeCloseTo(involute / 2, 1);
      const further = from(0).find(({ gives }) => gives === line?.gives);
      expect(Number.parseFloat(further?.answer ?? '')).toBeCloseTo(involute / 2 - 1, 1);
      expect(Number.parseFloat(from(1)[0]?.answer ?? '')).toBeCloseTo(module * (teeth + 2.76) - 1, 1);
    }
  });

  it('goes through another calculation, from a move of the crank', () => {
    const arms = {
      vary: { divisions: '42..144' },
      calculation: 'dividing.simple',
      keep: 'possible and turns = 0 and settings.0.holes >= 4',
      works: { arms: { calculation: 'dividing.sectorArms', holes: 'settings.0.holes' } },
      ask: 'Set it.',
      parts: [
        { ask: 'a', find: 'settings', slips: { over: { formula: 'k + 1', says: 'One over.' } } },
        { ask: 'b', find: 'arms.holesBetween' },
      ],
    };
    for (const { parts } of many(arms, 20)) {
      const holes = Number.parseInt(parts[1]?.answer ?? '', 10);
      expect(parts[1]?.follows).toEqual([
        { part: 0, gives: parts[0]?.slips[0]?.gives, answer: `${holes + 1}\u202Fholes` },
      ]);
    }
  });

  it('keeps what was told, and leaves out what does not change or has no value', () => {
    const told = {
      vary: { a: '2..9', b: '11..19' },
      works: {
        sum: { formula: 'a + b', check: 'sum - a = b' },
        part: { formula: 'sum/2', check: '2*part = sum' },
        root: { formula: 'sqrt(sum - b)', check: 'root*root = a' },
        apart: { formula: 'b - a', check: 'apart + a = b' },
      },
      tell: { part: '0.5' },
      ask: 'x',
      parts: [
        { ask: 'a', find: 'sum', slips: { less: { formula: 'b - 1', says: 'x' } } },
        { ask: 'b', find: 'part', answer: { to: '0.5' } },
        { ask: 'c', find: 'root', answer: { to: '0.01' } },
        { ask: 'd', find: 'apart' },
      ],
    };
    const { parts } = draw(told);
    expect(parts.map(({ follows }) => follows)).toEqual([[], [], [], []]);
  });
});
