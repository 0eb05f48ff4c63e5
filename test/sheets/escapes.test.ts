import { describe, expect, it } from 'vitest';
import { answerKeyHtml } from '../../src/sheets/answer-key.js';
import { cssString, isolated, shortened } from '../../src/sheets/css-string.js';
import { handoutHtml } from '../../src/sheets/handout.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { problemSheetHtml } from '../../src/sheets/problem-sheet.js';
import { shopCardHtml } from '../../src/sheets/shop-card.js';
import { card } from './class-card.js';
import { lesson, problem, problems } from './class-lessons.js';

const style: SheetStyle = { paper: 'a4', units: 'mm', print: 'plain' };
/** All that could break out of where it is put. */
const NASTY = `</style></title><script>alert("x")</script>'"&{{teeth}}}}{{{x}}}\\"; } body { display: none } <b>`;
const nastyHead = { course: NASTY, club: NASTY, kit: NASTY };
const nastyLesson = lesson({
  title: NASTY,
  part: NASTY,
  needs: [NASTY],
  goals: [NASTY],
  cautions: [NASTY],
  sources: [NASTY],
  body: 'Text <script>alert(1)</script> & <b>bold</b> \\{{teeth}} "quoted" [link](javascript:alert(1)) ![x](x.png) {{nasty}}',
  values: { nasty: '<script>alert(2)</script>' },
});
const sheet = {
  head: nastyHead,
  variant: 'K7Q2-M',
  learner: NASTY,
  lessons: [
    {
      lesson: nastyLesson,
      problems: [problem({ ask: NASTY.replace('{{teeth}}}}{{{x}}}', '') }), ...problems],
    },
  ],
};

const DOCUMENTS = {
  handout: () => handoutHtml({ head: nastyHead, lessons: [nastyLesson] }, style),
  problems: () => problemSheetHtml(sheet, style),
  key: () => answerKeyHtml(sheet, style),
  card: () => shopCardHtml({ ...card, head: nastyHead, job: NASTY, conventions: [NASTY] }, style),
};

describe.each(Object.entries(DOCUMENTS))('whatever stands in the texts of a %s', (_, make) => {
  const html = make();
  const [, css = ''] = /<style>([^]*?)<\/style>/.exec(html) ?? [];

  it('makes no element', () => {
    expect(html).not.toMatch(/<(script|b|img|iframe|object)\b/i);
    expect(html).not.toMatch(/href="(?!benchleaf\.css")|src=|javascript:[^<]*"/);
    expect(html.match(/<style>/g)).toHaveLength(1);
    expect(html.match(/<title>/g)).toHaveLength(1);
  });

  it('ends no string of the style sheet', () => {
    const bare = css.replace(/"(?:[^"\\\n]|\\.)*"/g, '""');
    expect(bare).not.toMatch(/display|script|alert|"[^";)\s]/);
    expect(css).not.toContain('<');
  });

  it('is printed as it stands', () => {
    const text = html.slice(html.indexOf('<body')).replace(/&quot;|&#x27;/g, '"');
    expect(text).toContain('alert("x")');
  });
});

describe('a text as a CSS string', () => {
  it.each([
    ['Larkfield', '"Larkfield"'],
    ['a "b" \\c', '"a \\22 b\\22  \\5c c"'],
    ['</style>', '"\\3c /style\\3e "'],
    ['two\nlines\r\u2028', '"two\\a lines\\d \\2028 "'],
    ['nought\0', '"nought\\fffd "'],
    ['½ – ′', '"½ – ′"'],
    [isolated('שרה'), '"\\2068 שרה\\2069 "'],
  ])('%j', (text, css) => expect(cssString(text)).toBe(css));

  it('is cut at a word where it is too long', () => {
    const title = 'Over-travel, stacks and set-up lengths';
    expect(shortened(title, 37, 3)).toBe('Over-travel, stacks and…');
    expect(shortened(title, 60, 3)).toBe(title);
    expect(shortened('x'.repeat(50), 10, 2)).toBe(`${'x'.repeat(9)}…`);
    expect(shortened('WWWWWWWWWW', 10, 2)).toBe('WWWWW…');
    expect(shortened(isolated('فَاطِمَة'), 8, 2)).toBe(isolated('فَاطِمَة'));
  });
});
