import type { Chance } from '../../src/problems/chance.js';
import type { Expected, ExpectedNumber } from '../../src/problems/expected.js';
import { type Node, named, textOf } from './xml-reader.js';

/** What a learner puts into the boxes of one question, by response. */
export type Typed = Readonly<Record<string, string>>;

const NUMBER = /-?\d+(?:\.\d+)?/g;

/** An answer as the key has it, typed into the boxes of an item with the keys that a keyboard has. */
export function typed(answer: string, expects: Expected, id: string, item: Node): Typed {
  const text = answer.replaceAll('−', '-').replace(/\s+/g, ' ');
  const numbers = text.match(NUMBER) ?? [];
  const boxes = () => Object.fromEntries(numbers.map((number, at) => [`${id}_${at + 1}`, number]));
  switch (expects.kind) {
    case 'number':
      return expects.angle === undefined ? { [id]: numbers[0] ?? '' } : boxes();
    case 'numbers':
      return boxes();
    case 'order':
      return { [id]: text.replaceAll(', ', ',') };
    case 'word':
      return { [id]: expects.other === undefined ? text : choiceOf(text, id, item) };
    default:
      return { [id]: text };
  }
}

/** The choice with these words. */
function choiceOf(text: string, id: string, item: Node): string {
  const [interaction] = named(item, 'qti-choice-interaction').filter(
    ({ attributes }) => attributes['response-identifier'] === id,
  );
  const choices = interaction ? named(interaction, 'qti-simple-choice') : [];
  return choices.find((choice) => textOf(choice) === text)?.attributes.identifier ?? `no choice is ${text}`;
}

/** Each answer that the key prints as right: of several movements of the crank, every one by itself. */
export function printedAnswers(answer: string, expects: Expected): string[] {
  if (expects.kind !== 'moves' || expects.moves.length < 2) return [answer];
  const [first = '', ...others] = answer.split(/, | or /);
  const turns = /^\d+ whole turns? and /.exec(first)?.[0] ?? '';
  return [first, ...others.map((other) => turns + other)];
}

/** Some answer, most likely wrong, as the key would print it; undefined where every answer there is would be right. */
export function someAnswer(expects: Expected, chance: Chance): string | undefined {
  switch (expects.kind) {
    case 'number':
      return someNumber(expects, chance);
    case 'numbers':
      return expects.each.map((one) => someNumber(one, chance)).join(', ');
    case 'moves':
      return `${expects.turns > 0 ? `${expects.turns} and ` : ''}${1 + chance.below(40)} on ${15 + chance.below(40)}`;
    case 'word':
      return expects.other ?? `${expects.word}x`;
    case 'set':
      return [...expects.items, '999'].filter(() => chance.below(2) === 0).join(', ') || '998';
    case 'choice':
      return expects.letters[chance.below(expects.letters.length)];
    case 'order':
      return [...expects.letters]
        .map((letter) => ({ letter, at: chance.below(1000) }))
        .sort((a, b) => a.at - b.at)
        .map(({ letter }) => letter)
        .join(', ');
  }
}

/** A number up to a half out, and at least some steps. */
function someNumber({ value, step, within, angle }: ExpectedNumber, chance: Chance): string {
  const size = step || 1;
  const least = 2 + Math.ceil(within / size);
  const off = (least + chance.below(Math.max(20, Math.abs(value / size) / 2))) * size;
  const number = value + (chance.below(2) === 0 ? off : -off);
  if (angle === undefined) return number.toFixed(4);
  const parts = angle === 'minute' ? 60 : 3600;
  const total = Math.round(Math.abs(number) * parts);
  const [whole, rest] = [Math.floor(total / parts), total % parts];
  const sign = number < 0 ? '-' : '';
  return angle === 'minute'
    ? `${sign}${whole}° ${rest}′`
    : `${sign}${whole}° ${Math.floor(rest / 60)}′ ${rest % 60}″`;
}
