import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';
import { checkGiven } from '../../src/figures/check-given.js';
import { figures } from '../../src/figures/index.js';
import { textOf } from '../../src/reference/cards/card.js';
import { collisions } from '../figures/collisions.js';
import { kits } from '../lesson/lessons.js';
import { families, figuresOn, jobs, saidOn } from './card-jobs.js';
import { isHeld } from './held.js';

/** The lettering of the pictures and the room for them, in plain print and in large, mm. */
const ROOMS = [
  { labelSize: 4.2, beside: [62, 76], wide: 133 },
  { labelSize: 6, beside: [88, 108], wide: 189 },
];

describe.each(
  families.map((one) => [`${one.kind.name}, ${one.kit.kit}, ${one.units}, ${one.who}`, one] as const),
)('%s', (_, { kind, cards, sources, who, units }) => {
  it('tells in every figure what the handbook says', () => {
    const wrong = cards.flatMap((card) =>
      figuresOn(card)
        .filter((figure) => !isHeld(figure))
        .map(({ text, calculation }) => `${card.title}: ${text} (${calculation})`),
    );
    expect(wrong).toEqual([]);
    // Guards and a class without a job have no figure to hold.
    if (kind.name !== 'guards' && who !== 'no job' && cards.length > 1)
      expect(sources.length).toBeGreaterThan(0);
  });

  it('says what its numbers are for, and no number that is none', () => {
    for (const card of cards) {
      if (card.numbers && card.numbers.length > 0) expect(card.about, card.title).toBeTruthy();
      expect(saidOn(card).map(textOf).join(' '), card.title).not.toMatch(/NaN|undefined|Infinity|null/);
    }
  });

  it('has a picture that can be drawn in its room, with no label on a line or a label', () => {
    const without = new Set<string>();
    for (const { title, picture } of cards) {
      const figure = picture && figures.get(picture.figure);
      if (!figure || !picture) continue;
      const given = checkGiven(figure.given, { ...picture.given });
      for (const { labelSize, beside, wide } of ROOMS) {
        const drawn = (picture.wide ? [wide] : beside).flatMap((maxWidth) => {
          try {
            return [figure.draw(given, { labelSize, units, maxWidth })];
          } catch {
            return [];
          }
        });
        if (drawn.length === 0) without.add(title);
        const touching = drawn.flatMap(({ marks }) => collisions(marks));
        expect(touching, title).toEqual([]);
      }
    }
    // A pinion of 64 mm has no room beside the words.
    const large = kind.name === 'diagnosis' && who.startsWith('a coarse wheel');
    expect([...without]).toEqual(large ? ['Pinion leaves thick: it binds'] : []);
  });
});

const family = (name: string, units = 'mm', at = 0, who = 'the class wheel') => {
  const found = families.find(
    (one) => one.kind.name === name && one.kit === kits[at] && one.units === units && one.who === who,
  );
  return found?.cards ?? [];
};
/** All that a card says, its big numbers first. */
const told = (name: string, title: RegExp, units?: string, at?: number): string => {
  const card = family(name, units, at).find((one) => title.test(one.title));
  return card
    ? saidOn(card)
        .map(textOf)
        .join(' | ')
        .replaceAll(/[\u202F\u00A0]/g, ' ')
    : '';
};

it.each([
  // 40 : 1, 60 teeth: two thirds of a turn, 10 on 15; the arms hold one hole more (a head maker’s table, from memory).
  ['sector-arms', /./, /10 on 15 .*\| 11 \|/],
  // A step is twice the error; lean asin(0.1/24) and asin(0.1/3.2) (elementary geometry, worked by hand).
  ['centring-test', /lean/, /0\.20 \| 0\.10 \| 0\.24 \| 1\.8 /],
  // A quarter of 60 is 15 teeth, a quarter of forty turns is 10.
  ['tally', /./, /¼ \| 15 \| 10 \| 0 \| ½ \| 30 \| 20 \| 0 \| ¾ \| 45 \| 30 \| 0 \| 1 \| 60 \| 40 \| 0/],
  // 1000 × 60/π/24 and 1000 × 60/π/50.208.
  ['brass', /./, /380 \| rev\/min: set 350 \| 796 \| rev\/min: set 800/],
  // 60 moves of nine fifteenths for ten: a tenth of a turn is left.
  ['diagnosis', /^Closing tooth fat/, /^36° /],
  // The trade’s table of symptoms: 14/21 wanted, 15/21 moved gives 56 (worked by hand: 40 × 21/15).
  ['diagnosis', /^Teeth even/, /^56 for 60 \| 15 spaces for 14, circle of 21/],
  // 64 teeth, each step of 5° 37′ 30″ set as 5° 38′: 0.533° at the end, 9.5 % of a pitch, at module 0.8.
  ['diagnosis', /rotary table/, /^0\.24 mm /],
  // 0.05 at radius 50 is 0.024 at radius 24; through 40 : 1 a fortieth.
  ['diagnosis', /every few teeth/, /^0\.024 mm \| through 40 : 1 only 0\.0006 mm/],
  // A minute of arc at radius 24.
  ['diagnosis', /ripple/, /^0\.007 mm /],
  // 12 − √(144 − 9).
  ['diagnosis', /^Roots/, /^0\.38 mm /],
  // 0.8 × 62 against 0.8 × 62.76.
  ['diagnosis', /^Teeth pointed/, /^49\.60 mm \| right: 50\.21 mm/],
  // Half of (π × 0.8 − the space of a cutter of module 0.85): 2.513 − 1.335.
  ['diagnosis', /^All teeth thin/, /^1\.18 mm \| right: 1\.26 mm/],
  // A cutter maker’s table: leaf 1.05 m; the wheel’s tooth is half a pitch.
  ['diagnosis', /^Pinion leaves/, /^1\.26 mm .*0\.84 mm/],
  // 0.97 × 50.208.
  ['diagnosis', /printed pattern/, /^48\.70 mm /],
  ['diagnosis', /^Buzzes/, /^27\.20 mm \| pinion over its tips 7\.77 mm/],
] as const)('%s, %s tells a published or hand-worked number', (name, title, said) => {
  expect(told(name, title)).toMatch(said);
});

it('tells the same in inches for the other workshop', () => {
  expect(told('diagnosis', /^Teeth pointed/, 'inch', 1)).toMatch(/^1\.953 in \| right: 1\.977 in/);
  // 60 : 1 and 60 teeth: a whole turn of the crank for each, so that its ripple is the same at every tooth.
  expect(told('diagnosis', /ripple/, 'inch', 1)).toContain('does not show it');
  expect(told('diagnosis', /ripple/)).not.toContain('does not show it');
  expect(told('brass', /./, 'inch', 1)).toContain('752 | rev/min: set 750');
});

it('a tally has a box for every tooth, and its quarters where they fall', () => {
  for (const [who, some] of Object.entries(jobs))
    for (const { name, teeth } of some) {
      const rows = family('tally', 'mm', 0, who)
        .filter(({ about = '' }) => about.startsWith(name))
        .flatMap(({ boxes = [] }) => boxes);
      const boxes = rows.flatMap((row) => row.boxes);
      expect(boxes.length, name).toBe(teeth);
      expect(rows.at(-1)?.count).toBe(teeth);
      const marks = boxes.flatMap((mark, at) => (mark === '' ? [] : [[mark, at + 1]]));
      expect(marks).toEqual(
        ['¼', '½', '¾', '1'].map((mark, at) => [mark, Math.floor((teeth * (at + 1)) / 4)]),
      );
    }
});

it('a class without a job has cards all the same, but no tally', () => {
  const titles = ['sector-arms', 'centring-test', 'diagnosis', 'brass', 'guards', 'tally'].map(
    (name) => family(name, 'mm', 0, 'no job').length,
  );
  expect(titles.slice(0, 5).every((count) => count > 0)).toBe(true);
  expect(titles[5]).toBe(0);
});

// The formula of Kincaid and others (1975), by the packages flesch-kincaid and syllable.
it('all the cards read at grade 9 or under', () => {
  const sentences = families
    .filter(({ units, who, kit }) => units === 'mm' && who === 'the class wheel' && kit === kits[0])
    .flatMap(({ cards }) =>
      cards.flatMap(({ passages = [] }) => passages.flatMap(({ lines }) => lines.map(textOf))),
    )
    .flatMap((line) => line.split(/(?<=[.!?:])\s+/));
  const words = sentences.flatMap((one) => one.match(/[A-Za-z][A-Za-z’'-]*|\d[\d.,]*/g) ?? []);
  const syllables = words.reduce((sum, word) => sum + Math.max(1, /\d/.test(word) ? 1 : syllable(word)), 0);
  expect(words.length).toBeGreaterThan(400);
  const grade = fleschKincaid({ sentence: sentences.length, word: words.length, syllable: syllables });
  expect(grade).toBeLessThanOrEqual(9);
});
