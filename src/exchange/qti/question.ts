import type { Part } from '../../problems/problem.js';
import type { PortablePart } from '../../sheets/portable.js';
import { marksIn } from '../../sheets/problem-marks.js';
import { counted } from '../../units/words.js';
import { entryFor } from './entries.js';
import type { Entry } from './entry.js';
import { baseValue, set, variable } from './expressions.js';
import { feedback } from './feedback.js';
import { formatted } from './maths.js';
import { answerWords } from './working.js';
import { element, type Xml } from './xml.js';

/** One question of an item: its response, its rules and what is said of the answer. */
export interface Question {
  readonly declarations: readonly Xml[];
  readonly outcome: Xml;
  readonly body: readonly Xml[];
  readonly rules: Xml;
  readonly feedback: readonly Xml[];
}

/**
 * A part of a problem as a question.
 *
 * @param letter `(a)`, or empty where there is one part only
 * @param place from 1
 * @param asked the part's own words
 */
export function questionOf(part: Part, letter: string, place: number, asked: PortablePart): Question {
  const outcome = `FEEDBACK_${place}`;
  const entry = entryFor(part.expects, `RESPONSE_${place}`, asked.options);
  const marks = marksIn(part.marks);
  const slips = slipsTold(part, entry);
  const say = (id: string, ...more: readonly Xml[]): Xml[] => [
    ...more,
    set(outcome, baseValue('identifier', id)),
  ];
  return {
    declarations: entry.declarations,
    outcome: element('qti-outcome-declaration', {
      identifier: outcome,
      cardinality: 'single',
      'base-type': 'identifier',
    }),
    body: [
      ...(letter === ''
        ? []
        : [element('p', {}, element('strong', {}, letter), ` ${counted(marks, 'mark')}`)]),
      ...(asked.xhtml === '' ? [] : [formatted(asked.xhtml)]),
      ...entry.body,
    ],
    rules: element(
      'qti-response-condition',
      {},
      element('qti-response-if', {}, entry.right, ...say('right', score(marks))),
      ...slips.map(({ given }, at) => element('qti-response-else-if', {}, given, ...say(`slip_${at + 1}`))),
      element('qti-response-else', {}, ...say('wrong')),
    ),
    feedback: [
      feedback(
        outcome,
        'right',
        element('p', {}, `${letter} Right: `.trimStart(), ...answerWords(part, asked.options)),
      ),
      ...slips.map(({ says }, at) =>
        feedback(outcome, `slip_${at + 1}`, element('p', {}, `${letter} ${says}`.trim())),
      ),
      feedback(
        outcome,
        'wrong',
        element('p', {}, `${letter} That is not the answer. See the method.`.trim()),
      ),
    ],
  };
}

/** The slips that an answer shows, in the order of the key. */
function slipsTold({ slips }: Part, entry: Entry): { readonly says: string; readonly given: Xml }[] {
  return slips.flatMap((line) => {
    const given = entry.slip(line);
    return given ? [{ says: line.says, given }] : [];
  });
}

/** All the marks of a part for its right answer: no program sees the method. */
const score = (marks: number): Xml =>
  set('SCORE', element('qti-sum', {}, variable('SCORE'), baseValue('float', String(marks))));
