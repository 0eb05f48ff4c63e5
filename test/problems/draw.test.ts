import { describe, expect, it } from 'vitest';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { drawProblem } from '../../src/problems/draw.js';
import { Fault } from '../../src/problems/fault.js';
import { problemSchema } from '../../src/problems/schema.js';

const [metric, inch] = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [
  Kit,
  Kit,
];
const kind = (declared: object) => ({ name: 'one', declared: problemSchema.parse(declared) });
const blank = {
  calculation: 'wheel.blank',
  with: { convention: 2.76 },
  vary: { teeth: '40..100', module: '0.3..1.0 by 0.05 mm' },
  ask: 'How big?',
  find: 'outsideDiameter',
  answer: { to: '0.01 mm', accept: '0.01 mm' },
};
const draw = (declared: object, seed = 'A', kit = metric, units: 'mm' | 'inch' = 'mm') =>
  drawProblem(kind(declared), seed, { kit, units });

function faultOf(declared: object): Fault {
  try {
    draw(declared);
  } catch (error) {
    if (error instanceof Fault) return error;
    throw error;
  }
  throw new Error('there was no fault');
}

describe('a problem that is drawn', () => {
  it('is the same for the same seed, and others for others', () => {
    expect(draw(blank, 'A')).toEqual(draw(blank, 'A'));
    const answers = new Set(Array.from({ length: 40 }, (_, i) => draw(blank, `${i}`).parts[0]?.answer));
    expect(answers.size).toBeGreaterThan(35);
  });

  it('prints answer, range, method, marks, slips and check that belong together', () => {
    const {
      values,
      parts: [part],
    } = draw(blank);
    const { teeth, module } = values as { teeth: number; module: number };
    const exact = module * (teeth + 2.76);
    expect(part?.answer).toBe(`${exact.toFixed(2)}\u202Fmm`);
    expect(part?.method.at(-1)).toMatchObject({
      formula: 'd_a = m*(z + 2.76)',
      numbers: { z: String(teeth), m: String(module) },
    });
    expect(part?.marks.map(({ code }) => code)).toEqual(['M1', 'A1']);
    expect(part?.slips.map(({ gives }) => gives)).toContain(`${(module * (teeth + 2)).toFixed(2)}\u202Fmm`);
    expect(part?.checks[0]?.source).toMatch(/diameter of blank/);
    expect(Number.parseFloat(part?.checks[0]?.value ?? '')).toBeCloseTo(exact, 3);
  });

  it('asks what the kit can and cannot do', () => {
    const possible = {
      calculation: 'dividing.simple',
      vary: { divisions: '51..53' },
      ask: 'Can it?',
      find: 'possible',
      keep: 'divisions = 53',
    };
    expect(draw(possible).parts[0]?.answer).toBe('not possible');
    expect(draw(possible, 'A', inch, 'inch').parts[0]?.answer).toBe('possible');
  });

  it('mixes possible and not possible about evenly', () => {
    const mixed = {
      calculation: 'dividing.simple',
      vary: { divisions: '12..130' },
      ask: 'Which?',
      find: 'settings',
      mix: 'possible',
    };
    const not = Array.from({ length: 200 }, (_, i) => draw(mixed, `${i}`)).filter(
      ({ parts: [part] }) => part?.answer === 'not possible on these plates',
    );
    expect(not.length).toBeGreaterThan(60);
    expect(not.length).toBeLessThan(140);
  });

  it('tells a rounded size and asks back what made it', () => {
    const back = {
      ...blank,
      find: 'teeth',
      answer: {},
      tell: { outsideDiameter: '0.01 mm or 0.001 in' },
      method: 'd_a/m - 2.76',
      slips: { two: { formula: 'd_a/m - 2', says: 'You took the involute rule.' } },
    };
    for (const units of ['mm', 'inch'] as const)
      for (let seed = 0; seed < 50; seed++) {
        const {
          values,
          parts: [part],
        } = draw(back, `${seed}`, metric, units);
        const { teeth, module, outsideDiameter } = values as Record<string, number>;
        const scale = units === 'mm' ? 100 : 1000 / 25.4;
        expect((outsideDiameter ?? 0) * scale).toBeCloseTo(Math.round((outsideDiameter ?? 0) * scale), 6);
        expect(part?.answer).toBe(String(teeth));
        expect(Math.round((outsideDiameter ?? 0) / (module ?? 1) - 2.76)).toBe(teeth);
      }
  });

  it('has parts, each with its own key, and names several workings', () => {
    const two = {
      vary: blank.vary,
      works: {
        trade: { calculation: 'wheel.blank', convention: 2.76 },
        travel: {
          calculation: 'setup.overTravel',
          depth: 'trade.depthOfCut',
          thickness: '2 mm',
        },
      },
      ask: 'One wheel.',
      parts: [
        { ask: 'How deep?', find: 'trade.depthOfCut', answer: blank.answer },
        { ask: 'How far?', find: 'travel.approach', answer: blank.answer },
      ],
    };
    const { parts } = draw(two);
    expect(parts.map(({ ask }) => ask)).toEqual(['How deep?', 'How far?']);
    expect(parts[1]?.method[0]).toMatchObject({ formula: 'g = sqrt(h*(D - h))' });
  });
});

describe('the standing rules', () => {
  it('no slip lands within the accepted range', () => {
    const wide = { ...blank, answer: { to: '0.01 mm', accept: '2 mm' } };
    const fault = faultOf(wide);
    expect(fault.rule).toBe('problem/no-solution');
    expect(fault.hints.join()).toMatch(/slip \w+ lands/);
  });

  it('no rounding that could go either way', () => {
    const tie = { ...blank, vary: { teeth: '[50]', module: '[0.125] mm' } }; // 0.125 × 52.76 = 6.595
    expect(faultOf(tie).hints.join()).toMatch(/rounding could go either way/);
  });

  it('keep must be able to hold', () =>
    expect(faultOf({ ...blank, keep: 'teeth > 200' })).toMatchObject({
      rule: 'problem/no-solution',
      path: ['vary'],
    }));
});

describe('a declaration that cannot be worked is told at its place', () => {
  it.each([
    [{ ...blank, calculation: 'wheel.blnk' }, 'calculation', /Did you mean wheel\.blank/],
    [{ ...blank, with: { convnetion: 2.76 } }, 'with.convnetion', /It is given/],
    [{ ...blank, find: 'outsideDiametre' }, 'find', /Did you mean outsideDiameter/],
    [{ ...blank, keep: 'teth > 5' }, 'keep', /Did you mean teeth/],
    [{ ...blank, answer: {} }, 'answer', /answer: \{ to/],
    [{ ...blank, slips: { x: { formula: 'mod*z', says: 'x' } } }, 'slips.x', /Known here|Did you mean/],
    [{ ...blank, find: 'teeth', answer: {} }, 'find', /^$/],
    [{ ...blank, tell: { teeth: 'a bit' } }, 'tell.teeth', /0\.01 mm/],
    [
      { ...blank, works: { t: { formula: 'teeth + 1', check: 't = teeth' } } },
      'works.t.check',
      /one of them is wrong/,
    ],
    [
      {
        ...blank,
        find: 'set',
        answer: {},
        works: {
          set: {
            among: { ratio: [40, 60] },
            calculation: 'dividing.simple',
            divisions: 'teeth',
            where: 'possibel',
          },
        },
      },
      'works.set.where',
      /Did you mean possible/,
    ],
    [{ ...blank, with: { convention: 'trade' } }, 'with.convention', /one of leaves, 2\.76/],
    [{ ...blank, calculation: 'dividing.simple', with: {} }, 'with', /Put divisions among the values/],
  ])('%#', (declared, path, hint) => {
    const fault = faultOf(declared);
    expect(fault.path.join('.')).toBe(path);
    expect(fault.hints.join(' ')).toMatch(hint);
  });
});
