import type { ExpectedWord } from '../../problems/expected.js';
import { answerLine, box, type Entry, isMapped, mappedDeclaration, responseDeclaration } from './entry.js';
import { isCorrect } from './expressions.js';
import { element } from './xml.js';

const LENGTH = 30;

/** One word: chosen where it is one of two, else written. */
export function wordEntry({ word, other }: ExpectedWord, id: string): Entry {
  const slip = () => undefined;
  if (other === undefined)
    return {
      declarations: [mappedDeclaration(id, word, [word])],
      body: [answerLine(box(id, LENGTH))],
      right: isMapped(id),
      slip,
    };
  // In the order of the alphabet: the place of the right one tells nothing.
  const choices = [word, other].sort().map((text, place) => ({ text, key: `choice_${place + 1}` }));
  const correct = choices.find(({ text }) => text === word)?.key ?? '';
  return {
    declarations: [responseDeclaration(id, 'identifier', correct)],
    body: [
      element(
        'qti-choice-interaction',
        { 'response-identifier': id, shuffle: false, 'max-choices': 1 },
        ...choices.map(({ text, key }) => element('qti-simple-choice', { identifier: key }, text)),
      ),
    ],
    right: isCorrect(id),
    slip,
  };
}
