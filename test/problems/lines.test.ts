import { describe, expect, it } from 'vitest';
import type { Shown } from '../../src/problems/shown.js';
import { blank, draw, faultOf, firstPart, many, tally } from './kinds.js';

const lines = ['outsideDiameter', 'half', 'left'];
const missing = { ...blank, lines, find: 'half' };
const errors = {
  involute: { of: 'outsideDiameter', formula: 'm*(z + 2)', says: 'That is the involute rule.' },
  whole: { of: 'half', formula: 'outsideDiameter', says: 'It was not halved.' },
  slip: { of: 'left', formula: 'it + 2', says: 'The millimetre was added.' },
};
const spoilt = { ...blank, lines, errors };

const workingOf = (shown: Shown | undefined) => (shown?.kind === 'working' ? shown.lines : []);
const rowsOf = (shown: Shown | undefined) => (shown?.kind === 'table' ? shown.rows : []);

describe('a line left blank', () => {
  it('tells its own name only, and its number stands in no other line', () => {
    for (const problem of many(missing, 40)) {
      const [first, gap, after] = workingOf(problem.shown);
      expect(first).toMatchObject({ left: 'd_a', result: expect.stringMatching(/mm$/) });
      expect(gap).toEqual({ left: 'half' });
      expect(after).toMatchObject({ formula: 'left = half - 1', result: expect.stringMatching(/mm$/) });
      expect(after).not.toHaveProperty('numbers');
      const { outsideDiameter } = problem.drawn as { outsideDiameter: number };
      expect(JSON.stringify(problem.shown)).not.toContain(String(Number((outsideDiameter / 2).toFixed(4))));
      expect(Number.parseFloat(firstPart(problem).answer)).toBeCloseTo(outsideDiameter / 2, 1);
    }
  });

  it('of a table is any row but the first, and each has the same number of rows', () => {
    const places = new Set<number>();
    for (const problem of many({ ...tally, find: 'reading' }, 120)) {
      const rows = rowsOf(problem.shown);
      expect(rows).toHaveLength(6);
      const place = rows.findIndex(({ value }) => value === undefined);
      places.add(place);
      const { moved, circle } = problem.drawn as { moved: number; circle: number };
      expect(firstPart(problem).answer).toBe(String(((place + 1) * moved) % circle));
      rows.forEach(({ head, value }, at) => {
        expect(head).toBe(String(at + 1));
        if (at !== place) expect(value).toBe(String(((at + 1) * moved) % circle));
      });
    }
    expect([...places].sort()).toEqual([1, 2, 3, 4, 5]);
  });

  it('is the next in the sequence where the last row is asked for', () => {
    const { shown, parts, drawn } = draw({ ...tally, find: 'reading.5' });
    expect(rowsOf(shown).map(({ value }) => value === undefined)).toEqual([
      false,
      false,
      false,
      false,
      false,
      true,
    ]);
    expect(parts[0]?.answer).toBe(String((6 * Number(drawn.moved)) % Number(drawn.circle)));
  });

  it('knows its row in slips', () => {
    const slips = { past: { formula: 'tooth*moved', says: 'Past the start.' } };
    for (const { parts, shown, drawn } of many({ ...tally, find: 'reading', slips }, 30)) {
      const place = rowsOf(shown).findIndex(({ value }) => value === undefined);
      expect(parts[0]?.slips.map(({ gives }) => gives)).toEqual([String((place + 1) * Number(drawn.moved))]);
    }
  });

  it.each([
    ['a line of no name', { ...missing, lines: ['half', 'lft'] }, 'lines'],
    ['a series among others', { ...tally, lines: ['reading', 'moved'], find: 'reading.2' }, 'lines'],
  ])('refuses %s', (_, declared, path) => expect(faultOf(declared).path.join('.')).toBe(path));
});

describe('one line wrong', () => {
  it('is found and put right; the lines below follow from it', () => {
    const wrong = new Set<string>();
    for (const problem of many(spoilt, 120)) {
      const [which, right] = problem.parts;
      const { outsideDiameter, teeth, module } = problem.drawn as Record<string, number>;
      const truth = [outsideDiameter ?? 0, (outsideDiameter ?? 0) / 2, (outsideDiameter ?? 0) / 2 - 1];
      const printed = workingOf(problem.shown).map((line) =>
        'result' in line ? Number.parseFloat(line.result ?? '') : Number.NaN,
      );
      const place = Number(/\d/.exec(which?.answer ?? '')?.[0]) - 1;
      wrong.add(which?.answer ?? '');
      printed.slice(0, place).forEach((value, at) => expect(value).toBeCloseTo(truth[at] ?? 0, 3));
      expect(Math.abs((printed[place] ?? 0) - (truth[place] ?? 0))).toBeGreaterThan(0.01);
      if (place === 0) expect(printed[0]).toBeCloseTo((module ?? 0) * ((teeth ?? 0) + 2), 3);
      if (place === 0) expect(printed[1]).toBeCloseTo((printed[0] ?? 0) / 2, 3);
      if (place < 2) expect(printed[2]).toBeCloseTo((printed[1] ?? 0) - 1, 3);
      expect(which?.slips.map(({ gives }) => gives)).toEqual(
        [1, 2, 3].slice(place + 1).map((line) => `line ${line}`),
      );
      expect(which?.method).toEqual([{ say: Object.values(errors)[place]?.says }]);
      expect(Number.parseFloat(right?.answer ?? '')).toBeCloseTo(truth[place] ?? 0, 1);
      expect(problem.parts.map(({ marks }) => marks.map(({ code }) => code).join())).toEqual(['B1', 'M1,A1']);
    }
    expect([...wrong].sort()).toEqual(['line 1', 'line 2', 'line 3']);
  });

  it('gives neighbours different lines', () => {
    for (const half of [0, 1] as const)
      for (const { parts } of many(spoilt, 40, { wish: { half } }))
        expect((Number(/\d/.exec(parts[0]?.answer ?? '')?.[0]) + 1) % 2).toBe(half);
  });

  it('of a table is named by what stands at its head, and all other rows are right', () => {
    const declared = { ...tally, errors: { hole: { of: 'reading', formula: 'it + 1', says: 'Holes.' } } };
    for (const problem of many(declared, 60)) {
      const { moved, circle } = problem.drawn as { moved: number; circle: number };
      const off = rowsOf(problem.shown).filter(
        ({ head, value }) => value !== String((Number(head) * moved) % circle),
      );
      expect(off).toHaveLength(1);
      expect(problem.parts[0]?.answer).toBe(off[0]?.head);
      expect(problem.parts[1]?.answer).toBe(String((Number(off[0]?.head) * moved) % circle));
    }
  });

  it('never prints as the right line would', () => {
    const declared = { ...spoilt, errors: { none: { of: 'half', formula: 'it + 0.001', says: 'x' } } };
    expect(faultOf(declared)).toMatchObject({ rule: 'problem/no-solution' });
  });

  it.each([
    [
      'an error of no line',
      { ...spoilt, errors: { x: { of: 'hlf', formula: 'it', says: 'x' } } },
      'errors.x.of',
    ],
    [
      'an error with an unknown name',
      { ...spoilt, errors: { x: { of: 'half', formula: 'itt', says: 'x' } } },
      'errors.x',
    ],
  ])('refuses %s, at its place', (_, declared, path) => expect(faultOf(declared).path.join('.')).toBe(path));
});
