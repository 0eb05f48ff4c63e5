import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { InputError } from '../../src/diagnostics/errors.js';
import type { Part } from '../../src/problems/problem.js';
import { answerColumns } from '../../src/sheets/answer-columns.js';
import { bands } from '../../src/sheets/bands.js';
import { classGridHtml } from '../../src/sheets/class-grid.js';
import type { ClassLine, ClassPart } from '../../src/sheets/class-model.js';
import { classSettingOf } from '../../src/sheets/class-setting.js';
import { shortAnswer } from '../../src/sheets/short-answer.js';
import { lookAt } from '../print/fingerprint.js';
import { classOf, STYLES } from './class-sets.js';
import { openPress, type Press } from './press.js';

describe('bands(columns, room)', () => {
  const shared = (widths: readonly number[], room: number) =>
    bands(
      widths.map((width) => ({ width })),
      room,
    ).map((band) => band.map(({ width }) => width));
  it('is one where all fit', () => expect(shared([3, 4, 3], 10)).toEqual([[3, 4, 3]]));
  it('is as few as can be, and even', () =>
    expect(shared([3, 3, 3, 3], 10)).toEqual([
      [3, 3],
      [3, 3],
    ]));
  it('gives what is too wide a band of its own', () =>
    expect(shared([2, 12, 2], 10)).toEqual([[2], [12], [2]]));
  it('is none of none', () => expect(shared([], 10)).toEqual([]));
});

describe('shortAnswer(part)', () => {
  const short = (part: Partial<Part>) => Object.values(shortAnswer(part as Part));
  const number = (value: number, unit: string, step: number, within: number) =>
    ({ kind: 'number', value, unit, step, within }) as const;
  it.each<[string, Partial<Part>, string[]]>([
    ['50.21 mm', { unit: 'mm', expects: number(50.21, 'mm', 0.01, 0.02) }, ['50.21', 'mm', '±0.02']],
    ['31 holes', { unit: 'holes', expects: number(31, 'holes', 0, 0) }, ['31', 'holes', '']],
    ['0.60 mm', { unit: 'mm', expects: number(0.6, 'mm', 0.05, 0.01) }, ['0.60', 'mm', '']],
    ['812', { unit: '', expects: number(812, '', 1, 40.6) }, ['812', '', '±40']],
    [
      '5° 13′ 3″',
      { unit: '', expects: { ...number(5.2175, '°', 1 / 3600, 1 / 60), angle: 'second' } },
      ['5° 13′ 3″', '', '±1′'],
    ],
    [
      '0.50 mm, 0.40 mm',
      {
        unit: 'mm',
        expects: { kind: 'numbers', each: [number(0.5, 'mm', 0.01, 0.01), number(0.4, 'mm', 0.01, 0.01)] },
      },
      ['0.50, 0.40', 'mm', '±0.01'],
    ],
    [
      '1 whole turn and 9 spaces on the 21-hole circle or 21 on the 49',
      {
        unit: '',
        expects: {
          kind: 'moves',
          turns: 1,
          moves: [
            { holes: 9, circle: 21 },
            { holes: 21, circle: 49 },
          ],
        },
      },
      ['1 turn 9/21, 21/49', '', ''],
    ],
    [
      '3 whole turns and no spaces',
      { unit: '', expects: { kind: 'moves', turns: 3, moves: [{ holes: 0, circle: 15 }] } },
      ['3 turns', '', ''],
    ],
    [
      'not possible on these plates',
      { unit: '', expects: { kind: 'moves', turns: 0, moves: [] } },
      ['not possible', '', ''],
    ],
    ['60, 72', { unit: '', expects: { kind: 'set', items: ['60', '72'] } }, ['60, 72', '', '']],
  ])('%s', (answer, part, expected) => expect(short({ answer, ...part })).toEqual(expected));
});

describe('answerColumns(lines)', () => {
  const setting = classSettingOf(STYLES['A4, plain']);
  const line = (...parts: readonly Omit<ClassPart, 'letter'>[]) =>
    ({
      lessons: [
        [
          {
            number: '6.1',
            marks: { M: 1, A: 1, B: 0, ft: 0 },
            parts: parts.map((part) => ({ letter: '', ...part })),
          },
        ],
      ],
    }) as unknown as ClassLine;
  const mm = (answer: string, within = '±0.01') => line({ answer, unit: 'mm', within });
  const inch = (answer: string) => line({ answer, unit: 'in', within: '±0.001' });
  const column = (...lines: readonly ClassLine[]) => {
    const [{ notes, cells } = { notes: [], cells: [] }] = answerColumns(lines, 0, setting);
    return { notes, cells };
  };

  it('says at the head what all share', () =>
    expect(column(mm('1.00'), mm('2.00'))).toEqual({ notes: ['mm ±0.01'], cells: ['1.00', '2.00'] }));
  it('says beside an answer that it is in other units than most', () =>
    expect(column(inch('0.040'), mm('2.00'), mm('3.00'))).toEqual({
      notes: ['mm ±0.01', 'in ±0.001'],
      cells: ['0.040 in', '2.00', '3.00'],
    }));
  it('says beside each what it may be out, where that differs', () =>
    expect(column(mm('1.00'), mm('2.00', '±0.05'))).toEqual({
      notes: ['mm'],
      cells: ['1.00 ±0.01', '2.00 ±0.05'],
    }));
  it('leaves empty what a learner was not asked', () =>
    expect(column(mm('1.00'), { lessons: [[]] } as unknown as ClassLine).cells).toEqual(['1.00', '']));
});

describe('a grid printed', () => {
  let press: Press;
  beforeAll(async () => {
    press = await openPress();
  });
  afterAll(() => press.close());

  it.each(Object.entries(STYLES))('on %s lies on its side, tagged, and fits', async (name, style) => {
    const { sizes, tagged, language, outline, text, pages } = await lookAt(
      await press.print(classGridHtml(classOf(30), style)),
    );
    expect(new Set(sizes)).toEqual(new Set([name.startsWith('A4') ? '297.0 × 209.9' : '279.4 × 215.9']));
    expect({ tagged, language }).toEqual({ tagged: true, language: 'en-GB' });
    expect(outline).toEqual(['KEY6 Blank and pinion sizes', 'KEY16 Simple indexing']);
    text.forEach((page, place) => {
      expect(page).toContain('KEY · Class 8FJ-1B1-4');
      expect(page).toContain(`page ${place + 1} of ${pages}`);
      expect(page).toMatch(/No\..*Seat.*Name/);
    });
  });

  it('has a class of thirty on a page for each lesson', async () => {
    const { text } = await lookAt(await press.print(classGridHtml(classOf(30), STYLES['A4, plain'])));
    expect(text).toHaveLength(2);
    for (const page of text) expect(page).toMatch(/Müller-Żółć 1\b[^]*Müller-Żółć 30\b/);
  });

  it('repeats its head over pages, and loses nobody', async () => {
    const { text } = await lookAt(await press.print(classGridHtml(classOf(70), STYLES['A4, plain'])));
    const names = text
      .slice(0, text.length / 2)
      .flatMap((page) => [...page.matchAll(/Müller-Żółć (\d+)/g)].map(([, n]) => Number(n)));
    expect(names).toEqual(Array.from({ length: 70 }, (_, n) => n + 1).filter((n) => n !== 5));
    for (const page of text) expect(page).toMatch(/No\..*Seat.*Name/);
  });

  it('refuses a name that cannot be printed', () =>
    expect(() => classGridHtml(classOf(1, { learner: '李' }), STYLES['A4, plain'])).toThrow(InputError));
});
