import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { learnerCodes, problemsOf } from '../../src/lesson/class-set.js';
import { kindsOf } from '../../src/lesson/kinds.js';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { readLesson } from '../../src/lesson/source.js';
import { problemSchema } from '../../src/problems/schema.js';

const kits = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [Kit, Kit];
const open = (name: string, kit: Kit) => {
  const file = `lessons/${name}/lesson.md`;
  return prepareLesson(readLesson(readFileSync(file, 'utf8'), file), { kit, units: kit.units });
};
const declared = (more: object) =>
  problemSchema.parse({
    calculation: 'wheel.blank',
    vary: { teeth: '50..90', module: '0.8 mm' },
    ask: 'x',
    find: 'outsideDiameter',
    ...more,
  });
const stages = (problems: Record<string, object>, fade: boolean) =>
  kindsOf({
    fade,
    problems: Object.fromEntries(Object.entries(problems).map(([name, more]) => [name, declared(more)])),
  }).map((kind) => `${kind.name}: ${kind.fade}`);

describe('the kinds of a lesson', () => {
  it('fade where the lesson says so, those that find the same by the same calculation together', () => {
    const problems = { one: { times: 2 }, other: { find: 'rootDiameter' }, more: {}, last: {}, again: {} };
    expect(stages(problems, true)).toEqual([
      'one: worked',
      'one.2: one blank',
      'other: bare',
      'more: last steps blank',
      'last: bare',
      'again: bare',
    ]);
    expect(stages(problems, false).every((line) => line.endsWith('bare'))).toBe(true);
  });

  it('fade as a problem itself says, and not where the answer is a letter', () => {
    expect(stages({ one: { fade: 'one blank' }, two: {} }, false)).toEqual(['one: one blank', 'two: bare']);
    expect(stages({ one: { choose: 4, times: 2 } }, true)).toEqual(['one: bare', 'one.2: bare']);
  });
});

describe.each(['06-blank-and-pinion-sizes', '16-simple-indexing'])('%s', (name) => {
  it('is printed with an example of other numbers, and each time with its own', () => {
    for (const kit of kits) {
      const prepared = open(name, kit);
      for (let variant = 0; variant < 40; variant++) {
        const problems = problemsOf(prepared, `${variant}`, { kit, units: kit.units });
        const examples = problems.filter(({ example }) => example);
        expect(examples).toHaveLength(1);
        for (const { name: own, example, parts, drawn } of examples) {
          expect(example?.drawn).not.toEqual(drawn);
          expect(example?.parts[0]?.answer).not.toBe(parts[0]?.answer);
          expect(example?.name).toBe(own);
        }
        const times = problems.filter((one) => /^(?:blank|setting)(?:\.\d)?$/.test(one.name));
        const numbers = [...times, ...examples.flatMap(({ example }) => example ?? [])].map((one) =>
          JSON.stringify([one.drawn.teeth ?? one.drawn.divisions, one.drawn.module]),
        );
        expect(new Set(numbers).size).toBe(numbers.length);
      }
    }
  });

  it('gives neighbours no answer in common that is a letter or a line', () => {
    const [kit] = kits;
    const prepared = open(name, kit);
    const codes = learnerCodes(
      'A',
      Array.from({ length: 16 }, (_, seat) => `learner ${seat}`),
    );
    const sets = codes.map((code) => problemsOf(prepared, code, { kit, units: kit.units }));
    sets.slice(1).forEach((set, seat) =>
      set.forEach((problem, at) => {
        const [mine, theirs] = [problem.parts[0], sets[seat]?.[at]?.parts[0]];
        // There is one place only for none of them.
        const last = mine?.answer === 'E' && problem.name === 'whichCircle';
        if ((mine?.options || /^line/.test(mine?.answer ?? '')) && !last)
          expect(mine?.answer).not.toBe(theirs?.answer);
      }),
    );
  });
});

describe('a fault in what is declared is told at its place', () => {
  const file = 'lessons/16-simple-indexing/lesson.md';
  const text = readFileSync(file, 'utf8');
  it.each([
    [
      'an unknown name in words to be put in order',
      '{{a}} spaces',
      '{{aa}} spaces',
      '{{aa}}',
      /there is no value called aa/,
    ],
    [
      'an unknown name in the words of an estimate',
      'ask: First estimate it to half a degree or so.',
      'ask: "About {{it}}?"',
      '{{it}}',
      /there is no value called it/,
    ],
    ['a line of no name', 'lines: [top, bottom,', 'lines: [topp, bottom,', 'lines:', /topp/],
    [
      'an error of no line',
      'of: spaces, formula: it',
      'of: space, formula: it',
      'of: space,',
      /not one of the lines/,
    ],
    ['nothing that is asked', '    find: order\n', '', 'level: c', /expected one of find, parts and errors/],
    [
      'a case whose second route differs',
      'check: moves < 0',
      'check: moves < 9',
      'check: moves < 9',
      /does not hold/,
    ],
    ['too many options', 'choose: 5', 'choose: 9', 'choose: 9', /5 at most/],
  ])('%s', (_, from, to, at, message) => {
    expect(text).toContain(from);
    const wrong = text.replace(from, to);
    const [kit] = kits;
    let told: readonly { message: string; start: { line: number } }[] = [];
    try {
      prepareLesson(readLesson(wrong, file), { kit, units: kit.units });
    } catch (error) {
      told = (error as { diagnostics?: typeof told }).diagnostics ?? [];
    }
    expect(told.map((one) => one.message).join()).toMatch(message);
    expect(wrong.split('\n')[(told[0]?.start.line ?? 1) - 1]).toContain(at);
  });
});
