import type { ExpectedSet, ExpectedWord } from '../../../src/problems/expected.js';

/** Ways to say one word or phrase. */
export function wordWays({ word, other }: ExpectedWord): string[] {
  const ways = [
    word,
    word.replace(/^./, (first) => first.toUpperCase()),
    `“${word}”`,
    `it: ${word}`.replace(/^it: /, 'answer: '),
    word.replaceAll(' ', '  '),
    `${word}!`,
  ];
  if (other === undefined) return ways;
  if (word === 'possible')
    ways.push('yes', 'Yes.', 'it is possible', 'yes, it is possible', 'it can be done');
  if (word === 'not possible')
    ways.push(
      'no',
      'No.',
      'impossible',
      'it is not possible',
      "it isn't possible",
      'no, not possible',
      "can't be done",
    );
  if (denies(word) !== denies(other)) ways.push(denies(word) ? 'no' : 'yes');
  return ways;
}

export const denies = (phrase: string): boolean => /\bnot\b/.test(phrase);

/** Ways to name all that serve. */
export function setWays({ items }: ExpectedSet): string[] {
  if (items.length === 0) return ['none', 'None.', 'none of them', 'no', 'nothing', '-'];
  const back = [...items].reverse();
  const last = items.at(-1);
  const unit = /[a-z]+$/.exec(last ?? '')?.[0] ?? '';
  const bare = items.map((item) => item.replace(/[^\d.]+$/, ''));
  return [
    items.join(', '),
    back.join(', '),
    back.join('; '),
    items.join(' and '),
    back.join(' & '),
    [back.slice(0, -1).join(', '), ...back.slice(-1)].filter((one) => one !== '').join(' and '),
    bare.join(' '),
    bare.join(', '),
    `${bare.join(', ')} ${unit}`,
    `only ${items.join(' and ')}`,
    ...(unit === ''
      ? [back.map((item) => `${item}:1`).join(', '), items.map((item) => `${item} to 1`).join(' and ')]
      : []),
    ...(unit === 'in'
      ? [bare.map((size) => `${Number((Number(size) * 25.4).toFixed(4))} mm`).join(', ')]
      : []),
    ...(unit === 'mm' ? [bare.map((size) => `${(Number(size) / 25.4).toFixed(5)} in`).join(', ')] : []),
  ];
}
