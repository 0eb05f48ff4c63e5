import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openKits } from '../../../src/kit/open.js';
import type { Kit } from '../../../src/kit/schema.js';
import { problemsOf } from '../../../src/lesson/class-set.js';
import { prepareLesson } from '../../../src/lesson/prepare.js';
import { readLesson } from '../../../src/lesson/source.js';
import { bookLesson } from '../../../src/pack/course-book.js';
import { citedIn } from '../../../src/sheets/book/bibliography.js';
import type { BookLesson } from '../../../src/sheets/book/model.js';
import { symbolsHtml, symbolsOfBook } from '../../../src/sheets/book/symbols.js';
import { formulasIn, inTex, meaningOf } from '../../../src/sheets/book/symbols-in.js';
import { head } from '../class-lessons.js';

const [kit] = openKits(['lessons/kits/harrow-lane.yaml']) as [Kit];
const SETTING = { kit, units: kit.units };
const lessons: BookLesson[] = readdirSync('lessons')
  .filter((name) => /^\d\d-/.test(name))
  .map((name) => {
    const file = `lessons/${name}/lesson.md`;
    const prepared = prepareLesson(readLesson(readFileSync(file, 'utf8'), file), SETTING);
    return bookLesson(prepared, [
      { lesson: prepared.lesson, problems: problemsOf(prepared, 'K7Q2-M', SETTING) },
    ]);
  });
const of = (number: number) => lessons.find(({ lesson }) => lesson.number === number) as BookLesson;

describe('the letters of a formula in TeX', () => {
  it.each([
    ['d_a = m(z + 2.76)', ['d_a', 'm', 'z']],
    ['\\sin a = \\frac{D_1 - D_{12}}{2\\,l_2}', ['a', 'D_1', 'D_12', 'l_2']],
    ['\\text{turns for one tooth} = \\frac{R}{N} \\label{turns}', ['R', 'N']],
    ['c = \\pi d', ['c', 'pi', 'd']],
    ['\\VAL{module} \\times 60', []],
  ])('%s', (tex, expected) => expect(inTex(tex)).toEqual(expected));
});

describe('the symbols of the lessons', () => {
  it.each(lessons.map((one) => [one.lesson.name, one] as const))('each has a meaning: %s', (_, one) => {
    const without = formulasIn(one).flatMap((formulas) =>
      // A word of several letters is printed as a word.
      formulas.symbols.filter((symbol) => /^[A-Za-z](_|$)/.test(symbol) && !meaningOf(formulas, symbol)),
    );
    expect([...new Set(without)]).toEqual([]);
  });

  it('mean what the calculation calls them, in the unit of the sheet', () => {
    const travel = symbolsOfBook([of(12)]).filter(({ symbol }) => symbol === 'g');
    expect(travel).toMatchObject([{ meaning: 'approach', unit: 'mm' }]);
    const inches = symbolsHtml({ head, variant: 'K7Q2-M', lessons: [of(6)] }, 'inch');
    expect(inches).toMatch(/<td>outside diameter<\/td><td>in<\/td>/);
    expect(inches).toMatch(/<td>module<\/td><td>mm<\/td>/); // as everywhere
  });

  it('are those that occur, each meaning once, small letters first', () => {
    const rows = symbolsOfBook([of(6), of(12)]);
    const symbols = rows.map(({ symbol }) => symbol);
    expect(symbols).not.toContain('R');
    expect(new Set(rows.map(({ symbol, meaning }) => `${symbol} ${meaning}`)).size).toBe(rows.length);
    expect(symbols.indexOf('d')).toBeLessThan(symbols.indexOf('D'));
    expect(rows.find(({ symbol }) => symbol === 'm')?.lessons.map(({ said }) => said)).toContain('6');
  });
});

describe('the bibliography', () => {
  it('has each work once, with the lessons that its numbers stand in', () => {
    const cited = citedIn([of(6), of(12), of(16)]);
    const works = cited.map(({ work }) => work);
    expect(new Set(works).size).toBe(works.length);
    const table = cited.find(({ key }) => key === 'cutter-table');
    expect(table?.lessons.map(({ said }) => said)).toContain('6');
    expect(table?.at).toMatch(/row/);
  });

  it('has every work that the lessons themselves list', () => {
    for (const one of lessons) {
      const works = citedIn([one]).map(({ work }) => work);
      for (const source of one.lesson.sources)
        expect(
          works.some((work) => work.startsWith(source)),
          source,
        ).toBe(true);
    }
  });
});
