import type { ExpectedNumber } from '../../problems/expected.js';
import { roundTo } from '../../units/format.js';
import { answerLine, box, type Entry, responseDeclaration } from './entry.js';
import { baseValue, near, variable } from './expressions.js';
import { accepted, slipNear } from './tolerance.js';
import { element, type Xml } from './xml.js';

const LENGTH = 4;
/** What each box holds: its sign, how many of them make a degree, and how it is read out. */
const BOXES = [
  { sign: '°', of: 1, word: 'degrees' },
  { sign: '′', of: 60, word: 'minutes' },
  { sign: '″', of: 3600, word: 'seconds' },
] as const;

/** An angle in degrees and minutes, or seconds too, each in a box of its own. A minus stands before the degrees. */
export function angleEntry(expects: ExpectedNumber, angle: 'minute' | 'second', id: string): Entry {
  const { value, step } = expects;
  const boxes = BOXES.slice(0, angle === 'minute' ? 2 : 3).map((one, place) => ({
    ...one,
    id: `${id}_${place + 1}`,
  }));
  const finest = boxes.at(-1)?.of ?? 1;
  const total = roundTo(Math.abs(value) * finest, 0);
  const correct = boxes.map(({ of }) => {
    const count = Math.floor((total * of) / finest);
    return of === 1 ? count : count % 60;
  });
  return {
    declarations: boxes.map((one, place) =>
      responseDeclaration(one.id, 'float', `${place === 0 && value < 0 ? '-' : ''}${correct[place]}`),
    ),
    body: [
      answerLine(...boxes.flatMap((one) => [box(one.id, LENGTH, one.word), `${one.sign} `])),
      element('p', {}, 'Fill every box; write 0 where there is none.'),
    ],
    right: near(value, degreesIn(boxes, value < 0), accepted(expects)),
    slip: ({ shown }) =>
      shown === undefined ? undefined : slipNear(shown, step, degreesIn(boxes, shown < 0)),
  };
}

/** What the boxes come to, in degrees; below nought the smaller parts lead further down. */
function degreesIn(boxes: readonly { readonly id: string; readonly of: number }[], below: boolean): Xml {
  const [whole, ...parts] = boxes.map(({ id, of }) =>
    of === 1 ? variable(id) : element('qti-divide', {}, variable(id), baseValue('float', String(of))),
  );
  if (!whole) throw new Error('an angle has boxes');
  return below
    ? element('qti-subtract', {}, whole, element('qti-sum', {}, ...parts))
    : element('qti-sum', {}, whole, ...parts);
}
