import { describe, expect, it } from 'vitest';
import { blank, draw, faultOf, firstPart, many } from './kinds.js';

const size = { ...blank, find: 'outsideDiameter', choose: 4 };
const circles = {
  vary: { teeth: '42..144', a: '15..20', b: '21..30', c: '31..40', d: '41..49' },
  works: {
    serves: {
      among: { circles: ['a', 'b', 'c', 'd'] },
      calculation: 'dividing.simple',
      divisions: 'teeth',
      where: 'possible',
    },
  },
  ask: 'Which circle?',
  find: 'serves',
  choose: { none: 'none of them' },
};
const turns = {
  vary: { a: '3..9', b: '10..17', c: '18..25' },
  works: {
    first: { formula: 'a/27', check: 'first*27 = a' },
    second: { formula: 'b/31', check: 'second*31 = b' },
    third: { formula: 'c/43', check: 'third*43 = c' },
    order: { rank: { first: '{{a}} on 27', second: '{{b}} on 31', third: '{{c}} on 43' } },
  },
  ask: 'In order?',
  find: 'order',
};
const fault = {
  vary: { gap: '-3..3' },
  works: {
    what: {
      cases: {
        'every move was short': { when: 'gap > 0', check: '-gap < 0', says: 'Then a gap is left.' },
        'every move was long': { when: 'gap < 0', check: '-gap > 0', says: 'Then the first is overrun.' },
        'nothing is wrong': { when: 'gap = 0', check: 'abs(gap) = 0' },
      },
    },
  },
  ask: 'What happened?',
  find: 'what',
  choose: 3,
};

/** How often each letter is the right one. */
function letters(problems: ReturnType<typeof many>): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const problem of problems) {
    const { answer } = firstPart(problem);
    counts[answer] = (counts[answer] ?? 0) + 1;
  }
  return counts;
}

describe('one to choose', () => {
  it('has the right one among what slips give, each once, and says of each wrong letter what was done', () => {
    for (const problem of many(size, 60)) {
      const { options = [], answer, slips, expects } = firstPart(problem);
      const right = draw({ ...size, choose: undefined }, 'A');
      expect(options.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D']);
      expect(new Set(options.map(({ text }) => text)).size).toBe(4);
      expect(expects).toEqual({ kind: 'choice', letter: answer, letters: ['A', 'B', 'C', 'D'] });
      expect(slips.map(({ gives }) => gives).sort()).toEqual(
        ['A', 'B', 'C', 'D'].filter((one) => one !== answer),
      );
      const { teeth, module } = problem.values as { teeth: number; module: number };
      const text = options.find(({ letter }) => letter === answer)?.text;
      expect(Number.parseFloat(text ?? '')).toBeCloseTo(module * (teeth + 2.76), 1);
      expect(firstPart(right).options).toBeUndefined();
    }
  });

  it('has every letter as often as any other', () => {
    const counts = letters(many(size, 800));
    for (const letter of 'ABCD') expect(counts[letter]).toBeGreaterThan(150);
  });

  it('gives neighbours different letters', () => {
    const of = (half: 0 | 1) => Object.keys(letters(many(size, 80, { wish: { half } }))).sort();
    expect(of(0)).toEqual(['A', 'C']);
    expect(of(1)).toEqual(['B', 'D']);
  });

  it('of several tried: the one that serves, or none of them, which stands last', () => {
    const drawn = many(circles, 150);
    for (const problem of drawn) {
      const { options = [], answer, method } = firstPart(problem);
      expect(options.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D', 'E']);
      expect(options[4]?.text).toBe('none of them');
      const { teeth } = problem.values as { teeth: number };
      const serving = options.filter(({ text }) => (40 * Number(text)) % teeth === 0);
      expect(serving.map(({ letter }) => letter)).toEqual(answer === 'E' ? [] : [answer]);
      expect(method).toHaveLength(4);
    }
    expect(Object.keys(letters(drawn))).toContain('E');
    expect(Object.keys(letters(drawn)).length).toBeGreaterThan(2);
  });

  it('of cases: the one that holds, with a word for each of the others that has one', () => {
    for (const problem of many(fault, 60)) {
      const { options = [], answer, slips, method, checks } = firstPart(problem);
      const { gap } = problem.values as { gap: number };
      const text = options.find(({ letter }) => letter === answer)?.text;
      expect(text).toBe(
        gap > 0 ? 'every move was short' : gap < 0 ? 'every move was long' : 'nothing is wrong',
      );
      expect(slips).toHaveLength(gap === 0 ? 2 : 1);
      expect(method).toHaveLength(1);
      expect(checks[0]?.agreement).toBe('holds');
    }
  });

  it.each([
    ['a word with nothing beside it', { ...size, find: 'it.x' }, 'find'],
    ['none, where nothing is tried', { ...fault, choose: { none: 'none' } }, 'choose.none'],
    ['more options than there are wrong ways', { ...size, find: 'half', choose: 5 }, 'vary'],
    [
      'two cases at once',
      {
        ...fault,
        works: {
          what: {
            cases: {
              short: { when: 'gap > 0', check: 'gap > 0' },
              some: { when: 'gap != 0', check: 'gap != 0' },
              none: { when: 'gap = 0', check: 'gap = 0' },
            },
          },
        },
      },
      'works.what.cases',
    ],
    [
      'cases whose second route differs',
      {
        ...fault,
        works: {
          what: {
            cases: {
              short: { when: 'gap > 0', check: 'gap > 1' },
              other: { when: 'gap <= 0', check: 'gap <= 1' },
            },
          },
        },
      },
      'works.what.cases.short.check',
    ],
  ])('refuses %s, at its place', (_, declared, path) => {
    let told = '';
    for (let seed = 0; seed < 20 && told === ''; seed++)
      try {
        draw(declared, `${seed}`);
      } catch (error) {
        told = (error as { path: readonly string[] }).path.join('.');
      }
    expect(told).toBe(path);
  });
});

describe('several to put in order', () => {
  it('are lettered as chance has them, and answered by their values', () => {
    for (const problem of many(turns, 100)) {
      const { options = [], expects, answer, slips, method } = firstPart(problem);
      const share = (letter: string): number => {
        const text = options.find((one) => one.letter === letter)?.text ?? '';
        const [, name = '', circle = ''] = /\{\{(\w)\}\} on (\d+)/.exec(text) ?? [];
        return Number(problem.values[name]) / Number(circle);
      };
      const order = expects.kind === 'order' ? expects.letters : [];
      expect([...order].sort()).toEqual(['A', 'B', 'C']);
      const values = order.map(share);
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect(answer).toBe(order.join(', '));
      expect(slips[0]?.gives).toBe([...order].reverse().join(', '));
      expect(method).toHaveLength(3);
    }
    expect(Object.keys(letters(many(turns, 200))).length).toBe(6);
  });

  it('are not asked where two are hardly apart', () => {
    const near = { ...turns, vary: { a: '9', b: '10..11', c: '14..20' } };
    // 9/27 against 14/43 is 2.4 % apart, 10/31 against 14/43 less than 1 %.
    for (const { values } of many(near, 40)) expect([values.b, values.c]).not.toEqual([10, 14]);
  });

  it('gives neighbours a different first letter', () => {
    for (const half of [0, 1] as const)
      for (const problem of many(turns, 40, { wish: { half } }))
        expect('ABC'.indexOf(firstPart(problem).answer[0] ?? '') % 2).toBe(half);
  });

  it('names its values', () =>
    expect(
      faultOf({
        ...turns,
        works: { ...turns.works, order: { rank: { first: 'a', secnd: 'b', third: 'c' } } },
      }).path,
    ).toEqual(['works', 'order', 'rank', 'secnd']));
});
