import type { Part, Problem } from '../../problems/problem.js';
import { letterOf, marksOf } from '../../sheets/problem-marks.js';
import { release } from '../release.js';
import { exampleBlocks } from './example.js';
import { baseValue, set } from './expressions.js';
import { methodFeedback } from './feedback.js';
import { formatted } from './maths.js';
import { ITEM_SCHEMA, inNamespace } from './namespaces.js';
import { questionOf } from './question.js';
import type { ItemWords } from './words.js';
import { element, type Xml, xmlDocument } from './xml.js';

/** What an item is known by. */
export interface ItemName {
  /** Unlike that of any other in the package. */
  readonly identifier: string;
  readonly title: string;
  /** The variant code, which makes the same numbers again. */
  readonly label: string;
}

/** A problem as an assessment item of QTI 3.0, each of its parts a question of it, its example before it. */
export function assessmentItem(name: ItemName, problem: Problem, words: ItemWords): string {
  const { ask, parts } = words;
  const questions = parts.map((asked, at) =>
    questionOf(problem.parts[at] as Part, letterOf(at, problem), at + 1, asked),
  );
  const marks = marksOf(problem);
  return xmlDocument(
    element(
      'qti-assessment-item',
      {
        ...inNamespace(ITEM_SCHEMA),
        ...name,
        adaptive: false,
        'time-dependent': false,
        'xml:lang': 'en-GB',
        'tool-name': 'Benchleaf',
        'tool-version': release,
      },
      ...questions.flatMap(({ declarations }) => declarations),
      number('SCORE', 0, marks),
      number('MAXSCORE', marks),
      ...questions.map(({ outcome }) => outcome),
      element('qti-outcome-declaration', {
        identifier: 'METHOD',
        cardinality: 'single',
        'base-type': 'identifier',
      }),
      element(
        'qti-item-body',
        {},
        ...(problem.example && words.example ? exampleBlocks(problem.example, words.example) : []),
        ...(ask.xhtml === '' ? [] : [formatted(ask.xhtml)]),
        ...questions.flatMap(({ body }) => body),
      ),
      element(
        'qti-response-processing',
        {},
        ...questions.map(({ rules }) => rules),
        set('METHOD', baseValue('identifier', 'shown')),
      ),
      ...questions.flatMap((question) => question.feedback),
      methodFeedback(problem, words),
    ),
  );
}

/** The declaration of an outcome that starts as a number. */
export function number(identifier: string, start: number, most?: number): Xml {
  return element(
    'qti-outcome-declaration',
    { identifier, cardinality: 'single', 'base-type': 'float', 'normal-maximum': most },
    element('qti-default-value', {}, element('qti-value', {}, String(start))),
  );
}
