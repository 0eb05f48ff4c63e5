import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryFor } from '../../src/exchange/qti/entries.js';
import type { Expected, ExpectedNumber } from '../../src/problems/expected.js';
import { judge, takesNumber } from '../../src/problems/judge.js';
import { itemFor, itemsFor, scores } from './one-question.js';
import { correctResponses, respond } from './processor.js';
import { type Node, named, textOf } from './xml-reader.js';

describe('a number', () => {
  it('is taken and refused as the judge of the sheets has it, half steps and all', async () => {
    const cases = fc
      .sample(
        fc.record({
          steps: fc.integer({ min: -400, max: 8000 }),
          step: fc.constantFrom(0, 0.001, 0.01, 0.05, 0.0625, 0.5, 1, 5),
          reach: fc.constantFrom(0, 0.4, 1, 2, 5, 12.5),
          off: fc.array(fc.integer({ min: -160, max: 160 }), { minLength: 30, maxLength: 30 }),
        }),
        { numRuns: 120, seed: 7 },
      )
      .map(({ steps, step, reach, off }) => {
        const size = step === 0 ? 1 : step;
        const value = Number((steps * size).toPrecision(12));
        const expects: ExpectedNumber = { kind: 'number', value, unit: 'mm', step, within: step * reach };
        return {
          expects,
          typed: off.map((tenths) => Number((value + (tenths / 10) * size).toPrecision(12))),
        };
      });
    const items = await itemsFor(cases.map(({ expects }) => ({ expects, slips: [] })));
    const verdicts = new Set<boolean>();
    for (const [place, { expects, typed }] of cases.entries())
      for (const number of typed) {
        // Just halfway binary dust decides, there as here; but for steps that binary has exactly.
        const halfway = Math.abs(Math.abs((number / expects.step) % 1) - 0.5) < 1e-6;
        if (halfway && ![0.0625, 0.5, 1, 5].includes(expects.step)) continue;
        const right = takesNumber(expects, number);
        verdicts.add(right);
        const text = number.toFixed(6);
        expect(scores(items[place] as Node, text), `${text} for ${JSON.stringify(expects)}`).toBe(
          right ? 1 : 0,
        );
      }
    expect(verdicts.size).toBe(2);
  });

  it('that is no number gets no mark, and no slip', async () => {
    const expects: ExpectedNumber = { kind: 'number', value: 50.21, unit: 'mm', step: 0.01, within: 0.01 };
    const item = await itemFor(expects, [{ gives: '49.60 mm', says: 'You added 2.', shown: 49.6 }]);
    for (const text of ['', 'about fifty', '50.21.1']) expect(scores(item, text)).toBe(0);
    expect(respond(item, { RESPONSE_1: '49.60' }).feedback[0]).toBe('You added 2.');
    expect(respond(item, { RESPONSE_1: '49.70' }).feedback[0]).not.toBe('You added 2.');
  });
});

describe('an angle', () => {
  const degrees = (value: number, angle: 'minute' | 'second'): ExpectedNumber => {
    const step = angle === 'minute' ? 1 / 60 : 1 / 3600;
    return { kind: 'number', value, unit: '°', step, within: 1 / 60, angle };
  };

  it.each([
    [6 + 26 / 60, 'minute', ['6', '26']],
    [5 + 37 / 60 + 30 / 3600, 'second', ['5', '37', '30']],
    [-(3 + 5 / 60), 'minute', ['-3', '5']],
    [-0.5, 'minute', ['-0', '30']],
  ] as const)('%f is boxes of degrees and parts of them', async (value, angle, boxes) => {
    const item = await itemFor(degrees(value, angle));
    const typed = Object.fromEntries(boxes.map((text, at) => [`RESPONSE_1_${at + 1}`, text]));
    expect(correctResponses(item)).toEqual(typed);
    expect(respond(item, typed).score).toBe(1);
    const [first = ''] = Object.keys(typed);
    expect(respond(item, { ...typed, [first]: '9' }).score).toBe(0);
  });
});

it('an angle of the other sign is a slip that is known, its minutes with it', async () => {
  const expects: ExpectedNumber = {
    kind: 'number',
    value: 3 + 5 / 60,
    unit: '°',
    step: 1 / 60,
    within: 1 / 60,
    angle: 'minute',
  };
  const slip = { gives: '−3° 5′', says: 'You turned it the other way.', shown: -(3 + 5 / 60) };
  const item = await itemFor(expects, [slip]);
  const { score, feedback } = respond(item, { RESPONSE_1_1: '-3', RESPONSE_1_2: '5' });
  expect([score, feedback[0]]).toEqual([0, slip.says]);
  expect(respond(item, { RESPONSE_1_1: '3', RESPONSE_1_2: '5' }).score).toBe(1);
});

describe('several numbers', () => {
  it('are all wanted, in their order', async () => {
    const each = [0.6, 0.6, 0.1].map(
      (value): ExpectedNumber => ({ kind: 'number', value, unit: 'mm', step: 0.01, within: 0.01 }),
    );
    const item = await itemFor({ kind: 'numbers', each });
    const typed = (...numbers: string[]) =>
      Object.fromEntries(numbers.map((text, at) => [`RESPONSE_1_${at + 1}`, text]));
    expect(respond(item, typed('0.60', '0.6', '.11')).score).toBe(1);
    expect(respond(item, typed('0.10', '0.6', '0.6')).score).toBe(0);
    expect(respond(item, typed('0.60', '0.6')).score).toBe(0);
  });
});

describe('words', () => {
  it('are chosen where there are two, and the place of the right one says nothing', async () => {
    const one = await itemFor({ kind: 'word', word: 'possible', other: 'not possible' });
    const two = await itemFor({ kind: 'word', word: 'not possible', other: 'possible' });
    expect(correctResponses(one)).toEqual({ RESPONSE_1: 'choice_2' });
    expect(correctResponses(two)).toEqual({ RESPONSE_1: 'choice_1' });
    expect(scores(one, 'choice_2')).toBe(1);
    expect(scores(one, 'choice_1')).toBe(0);
  });

  it('are written where there is one', async () => {
    const item = await itemFor({ kind: 'word', word: 'Number 3 cutter' });
    expect(scores(item, 'number 3 CUTTER')).toBe(1);
    expect(scores(item, 'number 4 cutter')).toBe(0);
  });
});

describe('letters', () => {
  const options = ['40', '60', '72'].map((text, at) => ({ letter: 'ABC'[at] ?? '', text }));

  it('are chosen, and each wrong one says what its slip says', async () => {
    const expects: Expected = { kind: 'choice', letter: 'B', letters: ['A', 'B', 'C'] };
    const item = await itemFor(expects, [{ gives: 'A', says: 'That is the head ratio.' }], options);
    expect(named(item, 'qti-simple-choice').map(textOf)).toEqual(['A 40', 'B 60', 'C 72']);
    expect(scores(item, 'B')).toBe(1);
    expect(respond(item, { RESPONSE_1: 'A' }).feedback[0]).toBe('That is the head ratio.');
    expect(respond(item, { RESPONSE_1: 'C' }).feedback[0]).toMatch(/not the answer/);
  });

  it('are put in order', async () => {
    const expects: Expected = { kind: 'order', letters: ['C', 'A', 'B'] };
    const item = await itemFor(expects, [{ gives: 'B, A, C', says: 'You began at the wrong end.' }], options);
    expect(scores(item, 'C,A,B')).toBe(1);
    expect(scores(item, 'A,C,B')).toBe(0);
    expect(respond(item, { RESPONSE_1: 'B,A,C' }).feedback[0]).toBe('You began at the wrong end.');
  });
});

describe('a set', () => {
  it('is taken in any order, however it is joined, with nothing more and nothing less', async () => {
    const item = await itemFor({ kind: 'set', items: ['60', '72', '90'] });
    const part = { expects: { kind: 'set', items: ['60', '72', '90'] }, slips: [], unit: '' } as const;
    for (const text of ['60, 72, 90', '90 60 72', '72; 60 and 90', '60,72, and 90', ' 60 & 72 & 90 ']) {
      expect(scores(item, text), text).toBe(1);
      expect(judge(text, part).kind, text).toBe('right');
    }
    for (const text of ['60, 72', '60, 72, 90, 40', '607290', '60, 72, 900', '', 'none']) {
      expect(scores(item, text), text).toBe(0);
      expect(judge(text, part).kind, text).not.toBe('right');
    }
  });

  it('may leave out units and the nought before a point', async () => {
    const item = await itemFor({ kind: 'set', items: ['0.625\u202Fin', '0.75\u202Fin'] });
    for (const text of ['0.625 in, 0.75 in', '.75, .625', '0.625in and 0.75'])
      expect(scores(item, text), text).toBe(1);
    for (const text of ['0.625 mm, 0.75', '0x625, 0.75']) expect(scores(item, text), text).toBe(0);
  });

  it('may be empty, or of words with marks in them', async () => {
    const none = await itemFor({ kind: 'set', items: [] });
    expect(scores(none, 'None')).toBe(1);
    expect(scores(none, '40')).toBe(0);
    const words = await itemFor({ kind: 'set', items: ['cutter (A)', 'cutter [B] $5'] });
    expect(scores(words, 'Cutter [b] $5, cutter (a)')).toBe(1);
    expect(scores(words, 'cutter A')).toBe(0);
  });
});

it('gives an entry for every kind of answer', () => {
  const one: ExpectedNumber = { kind: 'number', value: 1, unit: '', step: 0, within: 0 };
  const kinds: { [K in Expected['kind']]: Extract<Expected, { kind: K }> } = {
    number: one,
    numbers: { kind: 'numbers', each: [one] },
    moves: { kind: 'moves', turns: 0, moves: [] },
    word: { kind: 'word', word: 'yes' },
    set: { kind: 'set', items: [] },
    choice: { kind: 'choice', letter: 'A', letters: ['A', 'B'] },
    order: { kind: 'order', letters: ['A', 'B'] },
  };
  for (const expects of Object.values(kinds))
    expect(entryFor(expects, 'R', []).declarations.length).toBeGreaterThan(0);
});
