import type { ExpectedNumber, ExpectedNumbers } from '../../problems/expected.js';
import { placesOf } from '../../problems/show.js';
import { angleEntry } from './angle-entry.js';
import { answerLine, box, type Entry, responseDeclaration } from './entry.js';
import { all, near, variable } from './expressions.js';
import { accepted, slipNear } from './tolerance.js';
import { element } from './xml.js';

const LENGTH = 12;

/** One number, in the unit beside the box. */
export function numberEntry(expects: ExpectedNumber, id: string): Entry {
  if (expects.angle !== undefined) return angleEntry(expects, expects.angle, id);
  const { value, step, unit } = expects;
  const correct = step === 0 ? String(value) : value.toFixed(placesOf(step));
  return {
    declarations: [responseDeclaration(id, 'float', correct)],
    body: [answerLine(box(id, LENGTH, unit), unit === '' ? '' : ` ${unit}`)],
    right: near(value, variable(id), accepted(expects)),
    slip: ({ shown }) => (shown === undefined ? undefined : slipNear(shown, step, variable(id))),
  };
}

/** Several numbers in order, each in a box of its own; how many there are is told by the boxes. */
export function numbersEntry({ each }: ExpectedNumbers, id: string): Entry {
  const entries = each.map((one, place) => numberEntry(one, `${id}_${place + 1}`));
  return {
    declarations: entries.flatMap(({ declarations }) => declarations),
    body: [element('p', {}, 'In order:'), ...entries.flatMap(({ body }) => body)],
    right: all(entries.map(({ right }) => right)),
    slip: () => undefined,
  };
}
