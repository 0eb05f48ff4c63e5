import type { ExpectedChoice, ExpectedOrder } from '../../problems/expected.js';
import type { PortableOption } from '../../sheets/portable.js';
import { type Entry, responseDeclaration } from './entry.js';
import { lettered } from './example.js';
import { baseValue, isCorrect, same } from './expressions.js';
import { formatted } from './maths.js';
import { element, type Xml } from './xml.js';

/** One of several that are printed with letters. */
export function choiceEntry(
  { letter, letters }: ExpectedChoice,
  id: string,
  options: readonly PortableOption[],
): Entry {
  return {
    declarations: [responseDeclaration(id, 'identifier', letter)],
    body: [interaction('qti-choice-interaction', id, options, { 'max-choices': 1 })],
    right: isCorrect(id),
    slip: ({ gives }) => (letters.includes(gives) ? same(id, baseValue('identifier', gives)) : undefined),
  };
}

/** Several that are printed with letters, to be put in order. */
export function orderEntry(
  { letters }: ExpectedOrder,
  id: string,
  options: readonly PortableOption[],
): Entry {
  return {
    declarations: [responseDeclaration(id, 'identifier', letters)],
    body: [interaction('qti-order-interaction', id, options)],
    right: isCorrect(id),
    slip: ({ gives }) => {
      const given = gives.split(/,\s*/);
      return given.every((letter) => letters.includes(letter))
        ? same(id, element('qti-ordered', {}, ...given.map((letter) => baseValue('identifier', letter))))
        : undefined;
    },
  };
}

/** The options in the order of their letters, which stand before them: the key names no others. */
function interaction(name: string, id: string, options: readonly PortableOption[], more = {}): Xml {
  return element(
    name,
    { 'response-identifier': id, shuffle: false, ...more },
    ...options.map((option) =>
      element('qti-simple-choice', { identifier: option.letter }, formatted(lettered(option))),
    ),
  );
}
