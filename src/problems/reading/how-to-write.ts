import type { Expected, ExpectedNumber } from '../expected.js';
import { takesNumber } from './takes.js';

/** One sentence that says how an answer of this kind is written. */
export function howToWrite(expects: Expected): string {
  switch (expects.kind) {
    case 'number':
      return `Write ${numberLike(expects)}.`;
    case 'numbers':
      return 'Write every number, in order, with commas between: 12, 34, 56.';
    case 'moves':
      return 'Write the spaces and the circle, such as 7 on 29, with whole turns before: 1 turn and 7 on 29. Or write: not possible.';
    case 'word':
      return expects.other === undefined
        ? 'Write a word or a few.'
        : `Write one of two: ${[expects.word, expects.other].sort().join(', or ')}.`;
    case 'set':
      return 'Write all of them, with commas between, or: none.';
    case 'choice':
      return `Write one letter of ${expects.letters.join(', ')}.`;
    case 'order':
      return `Write each letter once, in order: ${[...expects.letters].sort().join(', ')} are the letters.`;
  }
}

function numberLike(expects: ExpectedNumber): string {
  const { unit, angle, step } = expects;
  if (angle === 'minute') return 'degrees and minutes, such as 12° 34′ or 12d34m';
  if (angle === 'second') return 'degrees, minutes and seconds, such as 12° 34′ 56″ or 12d34m56s';
  // The example must not be the answer.
  const like = (...numbers: readonly string[]): string =>
    numbers.find((number) => !takesNumber(expects, Number(number))) ?? '1';
  if (unit === '')
    return step === 0
      ? `one whole number, such as ${like('24', '36')}`
      : `one number, such as ${like('24.5', '36.5')}`;
  if (unit === 'in') return `one size, such as ${like('1.234', '2.345')} in or 1 3/8 in`;
  if (unit === '°') return `one angle, such as ${like('12.5', '34.5')}° or 12° 30′`;
  return step === 0
    ? `one whole number, such as ${like('24', '36')} ${unit}`
    : `one number, such as ${like('12.3', '45.6')} ${unit}`;
}
