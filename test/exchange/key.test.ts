import { describe, expect, it } from 'vitest';
import { keyJson, keyOf } from '../../src/exchange/key.js';
import { type Key, keyJsonSchema, keySchema } from '../../src/exchange/key-schema.js';
import { rangeOf } from '../../src/exchange/range.js';
import { valuesGiven } from '../../src/exchange/values-given.js';
import type { ExpectedNumber } from '../../src/problems/expected.js';
import { takesNumber } from '../../src/problems/judge.js';
import { KITS, sampleSheet, styleIn, UNITS, VARIANT } from './sheets.js';

const workshops = KITS.flatMap((kit) => UNITS.map((units) => ({ kit, units })));
const partsOf = (key: Key) => key.lessons.flatMap(({ problems }) => problems.flatMap(({ parts }) => parts));

it('the JSON Schema of the key is the one beside the lessons', async () => {
  const schema = `${JSON.stringify(keyJsonSchema(), null, 2)}\n`;
  await expect(schema).toMatchFileSnapshot('../../lessons/key.schema.json');
});

describe.each(workshops)('the key of the sample course for $kit in $units', ({ kit, units }) => {
  const sheet = sampleSheet(kit, units, VARIANT, 'Ada Brown');
  const key = keyOf(sheet, styleIn(units));

  it('is what its schema says, and survives being written and read', () => {
    const text = keyJson(sheet, styleIn(units));
    // JSON has one nought only, without a sign.
    expect(keySchema.parse(JSON.parse(text))).toEqual(JSON.parse(JSON.stringify(key)));
    expect(text).toBe(keyJson(sampleSheet(kit, units, VARIANT, 'Ada Brown'), styleIn(units)));
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('says whose it is, and from what', () => {
    expect(key).toMatchObject({ ...sheet.head, units, variant: VARIANT, learner: 'Ada Brown' });
    expect(key.release).toMatch(/^\d+\.\d+\.\d+/);
    expect(key.lessons.map(({ name }) => name)).toEqual(sheet.lessons.map(({ lesson }) => lesson.name));
  });

  it('has every problem, with all that the printed key says of it', () => {
    for (const [place, { problems }] of sheet.lessons.entries())
      for (const [at, problem] of problems.entries()) {
        const told = key.lessons[place]?.problems[at];
        expect(told?.number).toBe(`${key.lessons[place]?.number}.${at + 1}`);
        expect(told?.marks).toBeGreaterThan(0);
        for (const [one, part] of problem.parts.entries()) {
          const { answer, accepted, expects, slips, checks, marks, unit, follows = [] } = part;
          const printed = slips.map(({ cut: _, ...slip }) => slip);
          const all = { answer, accepted, expects, slips: printed, checks, marks, unit, follows };
          expect(told?.parts[one]).toMatchObject(all);
          expect(told?.parts[one]?.method).toHaveLength(part.method.length);
        }
      }
  });

  it('asks its questions in plain text', () => {
    for (const { problems } of key.lessons)
      for (const { question, parts } of problems) {
        expect(question).not.toBe('');
        for (const text of [question, ...parts.map((part) => part.question)])
          expect(text).not.toMatch(/[{}<>*]|&\w+;|\bundefined\b/);
      }
  });

  it('gives for every number the range that the judge takes, and no more', () => {
    const numbers = partsOf(key).filter(({ expects }) => expects.kind === 'number');
    expect(numbers.length).toBeGreaterThan(30);
    for (const { range, expects } of numbers) {
      const { step } = expects as ExpectedNumber;
      const { from = Number.NaN, to = Number.NaN } = range ?? {};
      for (const end of [from, to]) expect(takesNumber(expects as ExpectedNumber, end)).toBe(true);
      for (const out of [from - (step || 1), to + (step || 1)])
        expect(takesNumber(expects as ExpectedNumber, out)).toBe(false);
    }
  });

  it('has every value by the name that the question uses, as drawn and as told', () => {
    const [first] = key.lessons.find(({ name }) => name.startsWith('06-'))?.problems ?? [];
    expect(first?.values.map(({ name }) => name)).toEqual(expect.arrayContaining(['teeth', 'module']));
    const all = key.lessons.flatMap(({ problems }) => problems.flatMap(({ values }) => values));
    const rounded = all.filter(({ drawn, told }) => JSON.stringify(drawn) !== JSON.stringify(told));
    expect(rounded.length).toBeGreaterThan(0);
    for (const { name, drawn, told } of rounded) {
      expect(typeof drawn, name).toBe('number');
      expect(Math.abs(Number(drawn) - Number(told)), name).toBeLessThan(1);
    }
  });
});

it('a step with a formula has it as one line, with real signs', () => {
  const { lessons, ...key } = keyOf(sampleSheet('harrow-lane', 'mm'), styleIn('mm'));
  const [first] = partsOf({ ...key, lessons: lessons.filter(({ name }) => name.startsWith('06-')) });
  const [step] = first?.method ?? [];
  expect(step && 'line' in step ? step.line : '').toMatch(
    /^d_a = m × \(z \+ 2\.76\) = [\d.]+ × \(\d+ \+ 2\.76\) = [\d.]+\u202Fmm$/,
  );
});

it('a range is of numbers only, and keeps to the steps that the judge takes', () => {
  const number = (value: number, step: number, within: number): ExpectedNumber => ({
    kind: 'number',
    value,
    unit: '',
    step,
    within,
  });
  expect(rangeOf(number(50.21, 0.01, 0.01))).toEqual({ from: 50.2, to: 50.22 });
  expect(rangeOf(number(0.95, 0.05, 0.01))).toEqual({ from: 0.95, to: 0.95 });
  expect(rangeOf(number(-3, 0, 0))).toEqual({ from: -3, to: -3 });
  expect(rangeOf(number(250, 5, 12.5))).toEqual({ from: 240, to: 260 });
  expect(rangeOf({ kind: 'word', word: 'possible' })).toBeUndefined();
});

it('values are told by their whole names; a list is one value', () => {
  const drawn = {
    teeth: 60,
    wheel: { outsideDiameter: 50.208, fits: true },
    circles: [15, 16],
    gap: undefined,
  };
  const values = { kit: { name: 'K' }, ...drawn, wheel: { outsideDiameter: 50.21, fits: true } };
  expect(valuesGiven({ drawn, values })).toEqual([
    { name: 'teeth', drawn: 60, told: 60 },
    { name: 'wheel.outsideDiameter', drawn: 50.208, told: 50.21 },
    { name: 'wheel.fits', drawn: true, told: true },
    { name: 'circles', drawn: [15, 16], told: [15, 16] },
  ]);
});
