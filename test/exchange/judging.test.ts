import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { entryFor } from '../../src/exchange/qti/entries.js';
import { assessmentItem } from '../../src/exchange/qti/item.js';
import { impossibleForms, moveForms } from '../../src/exchange/qti/move-forms.js';
import { qtiFiles } from '../../src/exchange/qti/package.js';
import type { Expected, ExpectedNumber } from '../../src/problems/expected.js';
import { judge, takesNumber } from '../../src/problems/judge.js';
import type { Option, Part, Problem, SlipLine } from '../../src/problems/problem.js';
import { marksOf } from '../../src/sheets/problem-view.js';
import { correctResponses, respond } from './processor.js';
import { KITS, sampleSheet, styleIn, UNITS, VARIANT } from './sheets.js';
import { type Node, named, readXml, textOf } from './xml-reader.js';

const workshops = KITS.flatMap((kit) => UNITS.map((units) => ({ kit, units })));

describe.each(workshops)('the items of the sample course for $kit in $units', ({ kit, units }) => {
  let items: { problem: Problem; item: Node }[];
  beforeAll(async () => {
    const sheet = sampleSheet(kit, units);
    const files = qtiFiles(sheet, styleIn(units));
    const asked = sheet.lessons.flatMap(({ problems }, at) =>
      problems.map((problem) => ({
        problem,
        text: files.get(`items/lesson_${at + 1}_${problem.name}_${VARIANT}.xml`) ?? '',
      })),
    );
    const nodes = await readXml(asked.map(({ text }) => text));
    items = asked.map(({ problem }, place) => ({ problem, item: nodes[place] as Node }));
  });

  it('give all the marks for the answer that they declare, and show the method', () => {
    for (const { problem, item } of items) {
      const { score, feedback, outcomes } = respond(item, correctResponses(item));
      expect(score, problem.name).toBe(marksOf(problem));
      expect(outcomes.MAXSCORE).toBe(marksOf(problem));
      expect(feedback.at(-1)).toContain(problem.parts[0]?.answer);
      expect(feedback[0]).toMatch(/Right: /);
    }
  });

  it('give no mark for no answer', () => {
    for (const { problem, item } of items) expect(respond(item, {}).score, problem.name).toBe(0);
  });

  it('know each slip by what it gives, and say what the key says of it', () => {
    let known = 0;
    for (const { problem, item } of items)
      for (const [at, part] of problem.parts.entries())
        for (const slip of part.slips) {
          const responses = { ...correctResponses(item), ...typedSlip(part, slip, at + 1) };
          const { score, feedback } = respond(item, responses);
          expect(score, `${problem.name} ${slip.gives}`).toBeLessThan(marksOf(problem));
          expect(feedback.join('\n'), `${problem.name} ${slip.gives}`).toContain(slip.says);
          known++;
        }
    expect(known).toBeGreaterThan(60);
  });
});

/** A slip's answer as a learner types it. */
function typedSlip({ expects }: Part, { gives }: SlipLine, place: number): Record<string, string> {
  const id = `RESPONSE_${place}`;
  const plain = gives.replace('−', '-');
  if (expects.kind === 'order') return { [id]: plain.replaceAll(', ', ',') };
  if (expects.kind === 'moves' || expects.kind === 'choice') return { [id]: plain };
  const numbers = plain.match(/-?\d+(?:\.\d+)?/g) ?? [];
  return expects.kind === 'number' && expects.angle !== undefined
    ? Object.fromEntries(numbers.map((number, at) => [`${id}_${at + 1}`, number]))
    : { [id]: numbers[0] ?? '' };
}

/** Items with one question each, for answers that the sample course does not happen to ask. */
async function itemsFor(asked: readonly Pick<Part, 'expects' | 'slips' | 'options'>[]): Promise<Node[]> {
  const texts = asked.map(({ expects, slips, options = [] }) => {
    const part: Part = {
      ask: '',
      unit: '',
      room: 1,
      answer: 'the answer',
      accepted: 'only this',
      expects,
      slips,
      method: [],
      marks: [{ code: 'A1', for: 'accuracy' }],
      checks: [],
    };
    const problem: Problem = { name: 'one', level: 'a', ask: 'How?', values: {}, drawn: {}, parts: [part] };
    const words = { xhtml: '<p>How?</p>', plain: 'How?', figures: [] };
    const optionTexts = options.map(({ letter, text }) => ({
      letter,
      xhtml: `<p>${text}</p>`,
      plain: text,
      figures: [],
    }));
    const name = { identifier: 'one', title: 'One', label: VARIANT };
    return assessmentItem(name, problem, {
      ask: words,
      parts: [{ ...words, xhtml: '', options: optionTexts }],
    });
  });
  return readXml(texts);
}

const itemFor = async (
  expects: Expected,
  slips: readonly SlipLine[] = [],
  options: readonly Option[] = [],
): Promise<Node> => (await itemsFor([{ expects, slips, options }]))[0] as Node;
const scores = (item: Node, text: string): number => respond(item, { RESPONSE_1: text }).score;

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

describe('a movement of the crank', () => {
  const moves = [
    { holes: 15, circle: 21 },
    { holes: 35, circle: 49 },
  ];

  it('is taken as people write it, in capitals and with odd spaces', async () => {
    const item = await itemFor({ kind: 'moves', turns: 0, moves });
    const forms = [
      '15 on 21',
      '35 on the 49',
      '15/21',
      '5/7',
      '5/7 of a turn',
      '15 Spaces On The 21-hole Circle',
      ' 15  on  21 ',
    ];
    for (const form of forms) expect(scores(item, form), form).toBe(1);
    for (const form of ['14 on 21', '21 on 15', '15', '15 on 49', '115 on 21', '15 on 211', 'not possible'])
      expect(scores(item, form), form).toBe(0);
  });

  it('has its whole turns', async () => {
    const item = await itemFor({ kind: 'moves', turns: 3, moves: [{ holes: 3, circle: 39 }] });
    expect(scores(item, '3 3 on 39')).toBe(0); // nobody can tell it from 33
    const forms = [
      '3 whole turns and 3 spaces on the 39-hole circle',
      '3 and 3 on 39',
      '3 turns, 3 on 39',
      '3 + 3/39',
      '3 1/13',
      '40/13',
    ];
    for (const form of forms) expect(scores(item, form), form).toBe(1);
    for (const form of ['3 on 39', '33 on 39', '3 turns', '2 and 3 on 39', '3 and 33 on 39'])
      expect(scores(item, form), form).toBe(0);
  });

  it('may be whole turns alone, or not possible', async () => {
    const whole = await itemFor({ kind: 'moves', turns: 2, moves: [{ holes: 0, circle: 15 }] });
    for (const form of ['2', '2 turns', '2 whole turns', '2 whole turns and no spaces'])
      expect(scores(whole, form), form).toBe(1);
    expect(scores(whole, '2 and 1 on 15')).toBe(0);
    const none = await itemFor({ kind: 'moves', turns: 0, moves: [] });
    for (const form of ['not possible', 'Not possible', 'impossible'])
      expect(scores(none, form), form).toBe(1);
    expect(scores(none, '15 on 21')).toBe(0);
  });

  it('knows the slip by one space', async () => {
    const slip = { gives: '16 spaces on the 21-hole circle', says: 'One space too many.', shown: 16 };
    const item = await itemFor({ kind: 'moves', turns: 0, moves }, [slip]);
    for (const form of ['16 on 21', '16 spaces on the 21-hole circle', '16/21 of a turn'])
      expect(respond(item, { RESPONSE_1: form }).feedback[0], form).toBe(slip.says);
    expect(respond(item, { RESPONSE_1: '17 on 21' }).feedback[0]).not.toBe(slip.says);
  });
});

it.each([
  [0, 15, 21],
  [3, 3, 39],
  [1, 1, 28],
  [2, 0, 15],
])(
  'every form of %i turns and %i on %i that is mapped is one that the judge of the sheets takes',
  (turns, holes, circle) => {
    const forms = moveForms(turns, { holes, circle });
    expect(forms.length).toBeGreaterThan(3);
    const part = {
      expects: { kind: 'moves', turns, moves: [{ holes, circle }] },
      slips: [],
      unit: '',
    } as const;
    for (const form of forms) expect(judge(form, part).kind, form).toBe('right');
  },
);

it.each(impossibleForms)('%s is not possible, for the judge too', (form) => {
  const part = { expects: { kind: 'moves', turns: 0, moves: [] }, slips: [], unit: '' } as const;
  expect(judge(form, part).kind).toBe('right');
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
