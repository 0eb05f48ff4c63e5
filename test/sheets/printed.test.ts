import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerKeyHtml } from '../../src/sheets/answer-key.js';
import { handoutHtml } from '../../src/sheets/handout.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { problemSheetHtml } from '../../src/sheets/problem-sheet.js';
import { shopCardHtml } from '../../src/sheets/shop-card.js';
import { type Fingerprint, fingerprint } from '../print/fingerprint.js';
import { card } from './class-card.js';
import { head, lesson, problems } from './class-lessons.js';
import { heard, textSizes } from './heard.js';
import { openPress, type Press } from './press.js';

const styles = {
  'A4, mm, plain': { paper: 'a4', units: 'mm', print: 'plain' },
  'Letter, inch, large': { paper: 'letter', units: 'inch', print: 'large' },
} as const satisfies Record<string, SheetStyle>;
const plain = styles['A4, mm, plain'];
const learner = 'Łukasz Müller-Żółć';
const second = lesson({ number: 16, name: '16-simple-indexing', title: 'Simple indexing' });
const sheet = {
  head,
  variant: 'K7Q2-M',
  learner,
  lessons: [
    { lesson: lesson(), problems },
    { lesson: second, problems },
  ],
};

let press: Press;

beforeAll(async () => {
  press = await openPress();
});

afterAll(() => press.close());

const printed = async (html: string): Promise<Fingerprint> => fingerprint(await press.print(html));

/** Source Serif and Source Sans, and KaTeX’s for signs: all from the work folder. */
const OURS =
  /^(SourceSerif4-(Regular|Italic|SemiBold)|SourceSans3\S*|KaTeX_\S+|NotoSans(Symbols|Math)-Regular)$/;

describe.each(Object.entries(styles))('on %s', (name, style) => {
  const size = name.startsWith('A4') ? '209.9 × 297.0' : '215.9 × 279.4';
  const documents = {
    handout: () => handoutHtml({ head, lessons: [lesson(), second] }, style),
    problems: () => problemSheetHtml(sheet, style),
    key: () => answerKeyHtml(sheet, style),
    card: () => shopCardHtml(card, style),
  };

  it.each(Object.entries(documents))(
    'a %s is tagged, in English, in our own faces, on its paper',
    async (kind, html) => {
      const { fonts, sizes, tagged, language, title, outline } = await printed(html());
      expect({ tagged, language }).toEqual({ tagged: true, language: 'en-GB' });
      expect(title).toContain('The Larkfield timepiece');
      for (const font of fonts) expect(font).toMatch(OURS);
      const cardSize = { 'A4, mm, plain': '209.9 × 148.2', 'Letter, inch, large': '279.4 × 215.9' }[name];
      expect(new Set(sizes)).toEqual(new Set([kind === 'card' ? cardSize : size]));
      expect(outline.length).toBeGreaterThan(0);
    },
  );

  it('a handout has its lessons and their headings as bookmarks', async () => {
    const { outline } = await printed(documents.handout());
    expect(outline).toEqual(
      ['6 Blank and pinion sizes', '16 Simple indexing'].flatMap((title) => [
        title,
        ...['The job', 'From module to blank', 'What goes wrong, and how it shows', 'Sources'].map(
          (h) => `  ${h}`,
        ),
      ]),
    );
  });

  it('every page of a sheet and of its key says whose it is and which page of how many', async () => {
    for (const html of [documents.problems(), documents.key()]) {
      const { text, pages } = await printed(html);
      text.forEach((page, place) => {
        expect(page.normalize()).toContain('Variant K7Q2-M');
        expect(page.normalize()).toContain(learner);
        expect(page).toContain(`page ${place + 1} of ${pages}`);
        expect(page).toMatch(/Blank and pinion sizes|Simple indexing/);
      });
    }
  });

  it('every page of a key says that it is one', async () => {
    const { text } = await printed(documents.key());
    for (const page of text) expect(page).toContain('KEY');
  });

  it.each(['plain', 'large'] as const)('a card is one page, %s', async (print) => {
    expect((await printed(shopCardHtml(card, { ...style, print }))).pages).toBe(1);
  });

  it('formulas and signs are heard in their place', async () => {
    const body = 'Signs: × ÷ ± ° ′ ″ ½ ⅛ → ≤ ≥ ≈ √ π ∠ ⌀ ≠ so $d_a = m(z + 2.76)$ it is.\n\nThe end.';
    const pdf = await press.print(handoutHtml({ head, lessons: [lesson({ body })] }, style));
    const said = (await heard(pdf)).join('').replace(/[\s\u200b]/g, '');
    expect(said).toContain('Signs:×÷±°′″½1⁄8→≤≥≈√π∠⌀≠soda=m(z+2.76)itis.Theend.');
    for (const font of (await fingerprint(pdf)).fonts) expect(font).toMatch(OURS);
  });

  it.each(Object.entries(documents))(
    'a %s is printed at the size that its style sheet says',
    async (kind, html) => {
      const sizes = await textSizes(await press.print(html()));
      const wanted = { plain: { card: 12, other: 11.25 }, large: { card: 17, other: 18 } }[style.print];
      expect(sizes).toContain(kind === 'card' ? wanted.card : wanted.other);
      if (kind !== 'card')
        expect(Math.min(...sizes)).toBeGreaterThanOrEqual(style.print === 'large' ? 12 : 5.6);
    },
  );
});

describe('pages', () => {
  it('an overlong name, title and course stay within their page', async () => {
    const long = 'Wolfeschlegelsteinhausen '.repeat(8).trim();
    const html = problemSheetHtml(
      {
        head: { course: long, club: long, kit: long },
        variant: 'K7Q2-M',
        learner: long,
        lessons: [{ lesson: lesson({ title: long }), problems }],
      },
      plain,
    );
    const { text, pages } = await printed(html);
    expect(pages).toBeLessThanOrEqual(3);
    for (const page of text) expect(page).toContain('page ');
  });

  it('a problem is not torn by the end of a page', async () => {
    const many = {
      ...sheet,
      lessons: [{ lesson: lesson(), problems: [...problems, ...problems, ...problems] }],
    };
    const { text } = await printed(problemSheetHtml(many, plain));
    for (const page of text.map((lines) => lines.replaceAll('\n', ''))) {
      // As many places to answer as problems are begun on the page, and second parts.
      const begun = page.match(/6\.\d+(?= (?:A|Can) )|\(b\)/g) ?? [];
      expect(begun.length).toBeGreaterThan(0);
      expect(page.match(/Answer/g)).toHaveLength(begun.length);
    }
  });
});

it('nothing is drawn twice where one page ends and the next begins', async () => {
  const pdf = await press.print(
    handoutHtml({ head, lessons: [lesson(), second] }, styles['Letter, inch, large']),
  );
  const said = (await heard(pdf)).join('').replace(/\s/g, '');
  for (const once of [
    'The job',
    'From module to blank',
    'What goes wrong',
    'stubby teeth',
    'stop when the micrometer',
    'From train to blank',
  ])
    expect(said.split(once.replace(/\s/g, ''))).toHaveLength(3);
});
