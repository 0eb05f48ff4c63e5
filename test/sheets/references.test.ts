import { describe, expect, it } from 'vitest';
import { checkTemplate, type LessonPart } from '../../src/lesson/template.js';
import type { Vocabulary } from '../../src/lesson/vocabulary.js';
import { handoutHtml } from '../../src/sheets/handout.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { head, lesson } from './class-lessons.js';
import { complaints, printed } from './faulty.js';

const style: SheetStyle = { paper: 'a4', units: 'mm', print: 'plain' };
const handout = (body: string) => handoutHtml({ head, lessons: [lesson({ body })] }, style);
const BAR = '{{figure "check-bar" caption="A bar"}}';
const LABELLED = '{{figure "check-bar" label="second"}}';
const KNOWN: Vocabulary = new Map([['teeth', new Set<string>()]]);

function faultsOf(text: string, part: LessonPart = 'body') {
  return checkTemplate(text, KNOWN, part).faults.map(
    ({ rule, message, line, column, length, hints }) =>
      `${line}:${column}+${length} ${rule}: ${message} (${hints.join(' ')})`,
  );
}

describe('a reference', () => {
  it('prints the number of a figure, before it and after it, and leads to it', () => {
    const html = handout(`See {{ref "check-bar"}}.\n\n${BAR}\n\nAs **{{ref "check-bar"}}** shows.`);
    const links = [...html.matchAll(/<a href="#([^"]+)">([^<]+)<\/a>/g)].map(([, to, said]) => [to, said]);
    expect(links).toEqual(Array(2).fill(['lesson-06-blank-and-pinion-sizes-figure-1', 'Figure\u00A06.1']));
    expect(html).toMatch(/<figure id="lesson-06-blank-and-pinion-sizes-figure-1">/);
    expect(html).toMatch(/<strong>Figure 6\.1\.<\/strong> A bar/);
  });

  it('leads to what bears the label, and by its name to the first of two', () => {
    const html = handout(`${BAR}\n\n${LABELLED}\n\n{{ref "second"}} and {{ref "check-bar"}}`);
    expect(html).toMatch(/figure-2">Figure\u00A06\.2<\/a> and <a href="#[^"]+figure-1">Figure\u00A06\.1</);
  });

  it('prints the number of a formula that is named, and no other has one', () => {
    const html = handout(
      '$$x = 1$$\n\n$$d_a = m(z + \\VAL{teeth}) \\label{blank}$$\n\n$$y = 2\n\\label{two}$$\n\nBy {{ref "two"}} and {{ref "blank"}}.',
    );
    expect([...html.matchAll(/class="equation-number">([^<]+)</g)].map(([, said]) => said)).toEqual([
      '(6.1)',
      '(6.2)',
    ]);
    expect(html).toMatch(
      /equation-2">Equation\u00A06\.2<\/a> and <a href="#[^"]+equation-1">Equation\u00A06\.1</,
    );
    expect(html).toMatch(/<p class="display numbered" id="lesson-06-blank-and-pinion-sizes-equation-1">/);
    expect(html).not.toContain('\\label');
  });

  it('stands in tables, lists and headings', () => {
    const html = handout(
      `${BAR}\n\n## {{ref "check-bar"}}\n\n- {{ref "check-bar"}}\n\n| a | {{ref "check-bar"}} |\n|---|---|\n| b | c |`,
    );
    expect(html.match(/Figure\u00A06\.1<\/a>/g)).toHaveLength(3);
    expect(html).not.toMatch(/[\uE000\uE001]/);
  });

  it('leaves the place of a wrong formula true beside a label', () => {
    const [fault] = complaints(() => handout('$$\\label{a} x + \\nope$$'));
    expect(fault).toMatchObject({ rule: 'sheet/tex', start: { line: 40, column: 17 } });
  });
});

describe('a reference that leads nowhere', () => {
  it('is told at its place when the lesson is read, with what it may have meant', () => {
    expect(faultsOf(`${BAR}\n\nSee {{ref "chek-bar"}}.`)).toEqual([
      '3:11+10 reference: there is no figure or formula called "chek-bar" in this lesson (Did you mean check-bar?)',
    ]);
    expect(faultsOf('$$x = 1 \\label{one}$$ See {{ref "completely other"}}.')[0]).toContain(
      '(Known here: one.)',
    );
    expect(faultsOf('See {{ref "x"}}.')[0]).toContain('Name a figure, or a formula with \\label{…}.');
  });

  it('is told at its place when the page is set, where the figure has been left out', () => {
    const body = `{{#if wheel.possible}}\n${BAR}\n{{/if}}\n\nSee {{ref "check-bar"}}.`;
    expect(printed(() => handout(body))).toBe(
      [
        'lessons/06-blank-and-pinion-sizes/lesson.md:44:5: error[sheet/reference] there is no figure or formula called "check-bar" here',
        '  44 | See {{ref "check-bar"}}.',
        '     |     ^^^^^^^^^^^^^^^^^^^',
        '  hint: Take it out, or name a figure that is there.',
      ].join('\n'),
    );
  });

  it('is told where two figures have the name, and where two things have the label', () => {
    expect(faultsOf(`${BAR}\n\n${BAR}\n\n{{ref "check-bar"}}`)).toEqual([
      '5:7+11 reference: there are 2 figures called check-bar (Give the one that you mean a label: {{figure "check-bar" label="…"}}.)',
    ]);
    expect(faultsOf(`${LABELLED}\n\n$$x = 1 \\label{second}$$`)).toEqual([
      '3:9+14 reference: something else is labelled second (Choose another label.)',
    ]);
    expect(faultsOf(`${BAR}\n\n${BAR}\n\n${LABELLED}\n\n{{ref "second"}}`)).toEqual([]);
  });

  it.each([
    ['no name', '{{ref}}', 'ref takes one value after its name'],
    ['a value', '{{ref teeth}}', 'ref takes a name in quotation marks'],
    [
      'a label that is no name',
      '{{figure "check-bar" label=teeth}}',
      'label takes a name in quotation marks',
    ],
    ['a label of odd letters', '$$x \\label{My Rule!}$$', '"My Rule!" cannot be a label'],
  ])('has a fault: %s', (_, text, message) => expect(faultsOf(text).join()).toContain(message));

  it('has no place in a problem, and nor has a label', () => {
    expect(faultsOf('{{ref "check-bar"}}', 'problem').join()).toContain(
      'ref cannot stand in the words of a problem',
    );
    expect(faultsOf(LABELLED, 'problem').join()).toContain('the figure check-bar has no label');
  });
});
