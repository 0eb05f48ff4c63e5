import { describe, expect, it } from 'vitest';
import { problemsOf } from '../../src/lesson/class-set.js';
import { drawnAlone, drawnFor } from '../../src/practice/drawn.js';
import { practiceText, readPractice } from '../../src/practice/practice-lesson.js';
import { begun, changed, progressCsv, readProgress, sheetOf, tried } from '../../src/practice/progress.js';
import { remarkOn } from '../../src/practice/remark.js';
import { setProblem } from '../../src/practice/set-problem.js';
import { codeFor } from '../../src/problems/code.js';
import type { Problem } from '../../src/problems/problem.js';
import { textTemplates } from '../../src/sheets/text-templates.js';
import type { UnitSystem } from '../../src/units/format.js';
import { kits, lessonNames, practiceOf, prepared } from './lessons.js';

const codes = Array.from({ length: 8 }, (_, at) => codeFor(`practice ${at}`));
const style = (units: UnitSystem) => ({ paper: 'a4', print: 'plain', units }) as const;
const whole = (problems: readonly Problem[]) => JSON.parse(JSON.stringify(problems));

describe.each(kits)('a practice page for $kit', (kit) => {
  it.each(lessonNames)('draws what a sheet of %s prints for the same code', (name) => {
    // As the page has it: written into it as text.
    const page = readPractice(practiceText(practiceOf(name, kit)));
    for (const units of ['mm', 'inch'] as const)
      for (const code of codes) {
        const printed = problemsOf(prepared(name, kit, units), code, { kit, units });
        const progress = begun(code, units);
        expect(whole(drawnFor(page, progress))).toEqual(whole(printed));
        const [last] = printed.slice(-1);
        expect(whole([drawnAlone(page, progress, last?.name ?? '')])).toEqual(whole([last as Problem]));
      }
  });

  it.each(lessonNames)('sets every problem of %s, and gives nothing away', (name) => {
    const page = practiceOf(name, kit);
    for (const code of codes)
      for (const problem of drawnFor(page, begun(code, kit.units))) {
        const set = setProblem(problem, { lesson: name, style: style(kit.units), templates: textTemplates });
        expect(JSON.stringify([set.ask, set.parts.map(({ ask }) => ask)])).not.toMatch(/\{\{|undefined|NaN/);
        expect(set.parts).toHaveLength(problem.parts.length);
      }
  });
});

describe('what is said of an answer', () => {
  const page = practiceOf('06-blank-and-pinion-sizes');
  const problems = codes.flatMap((code) => drawnFor(page, begun(code, 'mm')));
  const all = [
    ...problems,
    ...codes.flatMap((code) => drawnFor(practiceOf('16-simple-indexing'), begun(code, 'mm'))),
  ];

  it('takes every printed answer, and says so', () => {
    for (const problem of all)
      for (const [at, part] of problem.parts.entries()) {
        const remark = remarkOn(part.answer, problem, at, [], style('mm'));
        expect({ problem: problem.name, ...remark }).toMatchObject({ outcome: 'right' });
        expect(remark.says).toContain('Right.');
      }
  });

  it('answers every slip with its sentence, and draws the wheel it makes', () => {
    let drawn = 0;
    for (const problem of all)
      for (const [at, { slips }] of problem.parts.entries())
        for (const { gives } of slips) {
          const remark = remarkOn(gives, problem, at, [], style('mm'));
          expect(remark.outcome).toBe('slip');
          expect(slips.some(({ says }) => remark.says.startsWith(says))).toBe(true);
          if (remark.wheel) drawn++;
        }
    expect(drawn).toBeGreaterThan(50);
  });

  it('draws the wheel that closes short, with the thickness of its last tooth', () => {
    const setting = all.find(({ name }) => name === 'setting') as Problem;
    const [part] = setting.parts;
    const over = part?.slips.find(({ says }) => says.startsWith('One space too many'));
    const { wheel } = remarkOn(over?.gives ?? '', setting, 0, [], style('mm'));
    const teeth = Number(setting.drawn.divisions);
    expect(wheel?.label).toContain(`a wheel of ${teeth} teeth`);
    expect(wheel?.label).toContain('the closing tooth');
  });

  it('knows an answer that follows from an earlier slip', () => {
    const some = all.flatMap((problem) =>
      problem.parts.flatMap((part, at) =>
        (part.follows ?? [])
          .filter(({ part: from }) => from === 0 && at === 1)
          .map((line) => ({ problem, at, line })),
      ),
    );
    expect(some.length).toBeGreaterThan(5);
    const outcomes = some.map(({ problem, at, line }) =>
      remarkOn(line.answer, problem, at, [line.gives], style('mm')),
    );
    // Where it is a slip of this part as well, that is said.
    expect(outcomes.filter(({ outcome }) => outcome === 'right')).toEqual([]);
    expect(outcomes.filter(({ outcome }) => outcome === 'follows').length).toBeGreaterThan(some.length / 2);
  });

  it('asks for an answer where none is', () => {
    const choose = all.find(({ parts }) => parts[0]?.expects.kind === 'choice') as Problem;
    expect(remarkOn('', choose, 0, [], style('mm'))).toEqual({
      outcome: 'unread',
      says: 'Choose one first.',
    });
    const [written] = problems as [Problem];
    expect(remarkOn('  ', written, 0, [], style('mm')).says).toMatch(
      /^Nothing is written here yet\. Write one/,
    );
    expect(remarkOn('a lot', written, 0, [], style('mm')).says).toMatch(/^That cannot be read\. Write one/);
  });
});

describe('progress', () => {
  const at = '2026-11-25T20:15:00.000Z';
  const place = { name: 'blank', part: 1, parts: 3 };
  const one = { at, problem: '6.1 (b)', variant: '8FJ-1B1-4', typed: '=1+1', outcome: 'right' } as const;

  it('keeps what stands in the boxes, and which are right', () => {
    const first = tried(begun('8FJ-1B1-4', 'mm'), place, one);
    expect(sheetOf(first, 'blank')).toEqual({
      code: '8FJ-1B1-4',
      typed: ['', '=1+1', ''],
      right: [1],
      shown: false,
    });
    const second = tried(first, place, { ...one, typed: '7', outcome: 'slip' });
    expect(sheetOf(second, 'blank')).toMatchObject({ typed: ['', '7', ''], right: [] });
    expect(second.tries).toHaveLength(2);
  });

  it('comes back as it was kept, and takes nothing else for it', () => {
    const kept = changed(tried(begun('8FJ-1B1-4', 'inch'), place, one), 'blank', { shown: true });
    expect(readProgress(JSON.stringify(kept))).toEqual(kept);
    for (const text of [
      '',
      '{',
      'null',
      '7',
      '{}',
      '{"code":1}',
      JSON.stringify({ ...kept, units: 'furlong' }),
    ])
      expect(readProgress(text)).toBeUndefined();
  });

  it('goes into a spreadsheet as text, never as a formula', () => {
    const text = progressCsv('Blank sizes', tried(begun('8FJ-1B1-4', 'mm'), place, one));
    expect(text.split('\r\n')[1]).toBe(`${at},Blank sizes,6.1 (b),8FJ-1B1-4,'=1+1,right`);
  });

  it('does not grow without end', () => {
    let progress = begun('8FJ-1B1-4', 'mm');
    for (let time = 0; time < 5010; time++)
      progress = tried(progress, place, { ...one, typed: String(time) });
    expect(progress.tries).toHaveLength(5000);
    expect(progress.tries.at(-1)?.typed).toBe('5009');
  });
});
