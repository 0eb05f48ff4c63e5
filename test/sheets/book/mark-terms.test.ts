import { describe, expect, it } from 'vitest';
import { TermMarks } from '../../../src/sheets/book/mark-terms.js';
import { terms } from '../../../src/sheets/book/terms.js';

/** The words found in some pages, and how often; `!` after one that is explained. */
function found(...pages: string[]): string[] {
  const marks = new TermMarks();
  for (const page of pages) marks.mark(page);
  return marks.entries.map(
    ({ word, mentions }) => `${word} ${mentions.length}${mentions.some(({ main }) => main) ? '!' : ''}`,
  );
}

describe('the words of the trade', () => {
  it('stand in their order, each once, and say what they mean in a sentence', () => {
    const words = terms.map(({ term }) => term);
    expect(words).toEqual([...new Set(words)].sort((a, b) => a.localeCompare(b, 'en-GB')));
    for (const { term, says } of terms) {
      expect(says, term).toMatch(/^\p{Lu}.*\.$/u);
      expect(says, term).not.toMatch(/[.!?]\s/);
      expect(says.split(' ').length, term).toBeLessThanOrEqual(25);
    }
  });

  it('are found by the forms that they are given', () => {
    for (const { term, beside = [] } of terms)
      expect(found(`<p>each ${term}</p><p>${beside.join(' ')}</p>`).join('|'), term).toContain(term);
  });
});

describe('a word in a lesson', () => {
  it('gets an anchor, in one number or several, over the end of a line, and whatever its case', () => {
    const html = new TermMarks().mark('<p>Leaves of a pitch\ncircle. The pinions’ leaf.</p>');
    expect(html).toBe(
      '<p><span id="term-1">Leaves</span> of a <span id="term-2">pitch\ncircle</span>. The <span id="term-3">pinions</span>’ <span id="term-4">leaf</span>.</p>',
    );
  });

  it('is the longest that fits, and no part of another word', () =>
    expect(found('<p>The depthing tool, the pitch diameter, the restraint.</p>')).toEqual([
      'depthing tool 1',
      'pitch diameter 1',
    ]));

  it('is not looked for in drawings, formulas, tags, the standing caution and the sources', () => {
    const page =
      '<svg aria-label="wheel"><text>wheel</text></svg><span class="katex"><span>wheel</span></span>' +
      '<p class="strip">Remove the chuck key.</p><a title="wheel">x</a><footer class="sources"><p>wheel</p></footer>';
    const marks = new TermMarks();
    expect(marks.mark(page)).toBe(page);
    expect(found(`${page}<p>pinion</p>`)).toEqual(['pinion 1']);
  });

  it('is meant only beside words of its own', () => {
    expect(found('<p>the arms of a wheel, from rim to hub</p>')).toContain('arm 1');
    expect(found('<p>Set the sector arms. The arms hold five holes.</p>')).toEqual(['sector arms 2']);
    // Each lesson by itself.
    expect(found('<p>the arms</p>', '<p>its hub</p>')).toEqual(['hub 1']);
  });
});

describe('a word that a lesson marks', () => {
  it('is explained there, and the lesson’s own are listed too', () =>
    expect(
      found('<p>The <strong>addendum</strong> and the <strong>taper pin</strong>. An addendum.</p>'),
    ).toEqual(['addendum 2!', 'taper pin 1!']));

  it('may head its explanation in a list', () =>
    expect(found('<ul><li><strong>Head ratio</strong>, the turns</li></ul>')).toEqual(['head ratio 1!']));

  it('is no rule, no sentence and no first words', () =>
    expect(
      found(
        '<p><strong>Guess first.</strong> <strong>To touch up</strong>, stone. <strong>Feed = turns × bite.</strong></p>',
      ),
    ).toEqual(['bite 1', 'feed 1']));
});
