import { describe, expect, it } from 'vitest';
import { pageList, pageWord } from '../../../src/sheets/book/page-list.js';
import { runsOf } from '../../../src/sheets/book/title.js';

/** What is printed for a word on these pages; `!` marks one where it is explained. */
function listed(...pages: string[]): string {
  const mentions = pages.map((page, at) => ({ anchor: `a${at}`, main: page.endsWith('!') }));
  const numbers = new Map(pages.map((page, at) => [`a${at}`, Number.parseInt(page, 10)]));
  const { pages: links, from } = pageList({ word: 'x', mentions }, (anchor) => numbers.get(anchor));
  const said = links.map(({ said: one, main }) => `${one}${main ? '!' : ''}`).join(', ');
  return from ? `${said}; from ${from.said}` : said;
}

describe('the pages of a word', () => {
  it.each([
    ['each once, in order', ['7', '3', '3', '7'], '3, 7'],
    ['runs together', ['3', '4', '5', '7', '8', '10'], '3–5, 7–8, 10'],
    ['where it is explained apart', ['3', '4!', '5', '6'], '3, 4!, 5–6'],
    ['explained where any of its places there says so', ['3', '3!', '3'], '3!'],
  ])('%s', (_, pages, said) => expect(listed(...pages)).toBe(said));

  it('are told by the first where there are too many, and by where it is explained', () => {
    const many = Array.from({ length: 11 }, (_, n) => String(3 + 2 * n));
    expect(listed(...many.slice(1))).toBe('5, 7, 9, 11, 13, 15, 17, 19, 21, 23');
    expect(listed(...many)).toBe('; from 3');
    expect(listed(...many, '30!')).toBe('30!; from 3');
  });

  it('lead each to the first place on its page', () => {
    const mentions = ['a', 'b', 'c'].map((anchor) => ({ anchor, main: false }));
    const pages = new Map([
      ['a', 3],
      ['b', 3],
      ['c', 5],
    ]);
    const { pages: links } = pageList({ word: 'x', mentions }, (anchor) => pages.get(anchor));
    expect(links.map(({ anchor }) => anchor)).toEqual(['a', 'c']);
  });

  it('have room before they are known', () => expect(pageWord(undefined)).toBe('000'));
});

it.each([
  [[6], '6'],
  [[6, 7], '6 and 7'],
  [[16, 9, 10, 11, 6, 7], '6, 7, 9 to 11 and 16'],
])('lessons %j are told as %s', (numbers, said) => expect(runsOf(numbers)).toBe(said));
