import { describe, expect, it } from 'vitest';
import { handoutHtml } from '../../src/sheets/handout.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { problemSheetHtml } from '../../src/sheets/problem-sheet.js';
import { head, lesson, problem } from './class-lessons.js';
import { complaints, printed } from './faulty.js';

const style: SheetStyle = { paper: 'a4', units: 'mm', print: 'plain' };
const handout = (...bodies: string[]) =>
  handoutHtml(
    { head, lessons: bodies.map((body, place) => lesson({ body, file: `lessons/${place + 6}/lesson.md` })) },
    style,
  );

describe('a fault in a lesson’s text', () => {
  it('is shown with its line, a caret and a hint', () => {
    expect(printed(() => handout('All well.\n\nThe rule is $d_a = m\\nope(z + 2.76)$ here.'))).toBe(
      [
        'lessons/6/lesson.md:42:21: error[sheet/tex] Undefined control sequence: \\nope',
        '  42 | The rule is $d_a = m\\nope(z + 2.76)$ here.',
        '     |                     ^^^^^',
        '  hint: Check the commands and brackets between the $ signs.',
      ].join('\n'),
    );
  });

  it.each([
    ['in a line', 'Teeth {{teeth}}: $\\frac{1$.', 40, 26],
    ['on lines of its own', 'One.\n\n$$\nx = \\frac{1}{2} +\n\\sqr{2}\n$$', 44, 1],
    ['in a list, after values', '- {{teeth}} teeth\n- {{mm module}}, so $x^{2$', 41, 26],
    ['where TeX has its doubts', 'An angle: $6é$', 40, 13],
    ['an unknown number', 'So $2 \\times \\VAL{nope}$', 40, 14],
    ['a $ without its partner', 'It costs $5 here', 40, 10],
    ['a space after the sign', 'It is $ x$ here', 40, 7],
    ['a loading command', '$\\includegraphics{x.png}$', 40, 2],
    ['too much of it', '$\\def\\a{\\a\\a}\\a$', 40, 2],
  ])('TeX: %s', (_, body, line, column) => {
    const [fault] = complaints(() => handout(body));
    expect(fault?.rule).toBe('sheet/tex');
    expect(fault?.start.line).toBe(line);
    expect(fault?.start.column).toBe(column);
  });

  it('a formula that defines a command, which the next does not know', () => {
    const faults = complaints(() => handout('$\\gdef\\own{1}\\own$ and $\\own + 1$'));
    expect(faults.map(({ message }) => message)).toEqual([
      '\\gdef is not for lessons',
      'Undefined control sequence: \\own',
    ]);
  });

  it('a figure that cannot be drawn, and one higher than the page', () => {
    const faults = complaints(() =>
      handout(
        'One.\n\n{{figure "wheel-blank" teeth=teeth}}\n\n{{figure "check-bar" length=250}}\n\n{{figure "nope"}}\n',
      ),
    );
    expect(faults.map(({ rule, start }) => [rule, start.line, start.column])).toEqual([
      ['sheet/figure', 42, 1],
      ['sheet/figure', 44, 1],
      ['sheet/figure', 46, 1],
    ]);
    expect(faults[1]?.message).toMatch(/mm for this figure|high/);
  });

  it('a working that is not there', () => {
    const [fault] = complaints(() => handout('{{worked "whel"}}'));
    expect(fault).toMatchObject({
      start: { line: 40, column: 1 },
      message: 'there is no working called "whel"',
    });
  });

  it('a character that no face has', () => {
    const [fault] = complaints(() => handout('Fine.\n\nNot 漢 fine.'));
    expect(fault).toMatchObject({ rule: 'sheet/glyph', start: { line: 42, column: 5 }, length: 1 });
    expect(fault?.message).toContain('“漢” (U+6F22)');
  });

  it('all faults of all lessons are told at once', () => {
    const faults = complaints(() => handout('$\\a$ {{nope}}', 'Fine.', '$\\b$'));
    expect(faults.map(({ file, rule }) => `${file} ${rule}`).sort()).toEqual([
      'lessons/6/lesson.md sheet/tex',
      'lessons/6/lesson.md sheet/value',
      'lessons/8/lesson.md sheet/tex',
    ]);
  });
});

describe('a fault in the words of a problem', () => {
  const sheet = (ask: string) => ({
    head,
    variant: 'K7Q2-M',
    lessons: [{ lesson: lesson(), problems: [problem({ ask }), problem({ ask })] }],
  });

  it('names the problem, once', () => {
    const faults = complaints(() =>
      problemSheetHtml(sheet('What is $\\nope$, with {{teeth}} teeth?'), style),
    );
    expect(faults.map(({ message }) => message)).toEqual([
      'problem blank: Undefined control sequence: \\nope',
    ]);
  });

  it('a working has no place there', () => {
    const faults = complaints(() => problemSheetHtml(sheet('See:\n\n{{worked "wheel"}}'), style));
    expect(faults.map(({ message }) => message)).toEqual(['problem blank: a problem may not show a working']);
  });
});
