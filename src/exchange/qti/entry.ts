import type { SlipLine } from '../../problems/problem.js';
import { type BaseType, baseValue } from './expressions.js';
import { type Child, element, type Xml } from './xml.js';

/** How a learner answers one question there, and how the answer is judged. */
export interface Entry {
  /** Of the responses; each is bound to one interaction of the body. */
  readonly declarations: readonly Xml[];
  /** Blocks for the item's body. */
  readonly body: readonly Xml[];
  /** True for a right answer. */
  readonly right: Xml;
  /** True for an answer that this slip gives; undefined where the entry cannot tell. */
  slip(line: SlipLine): Xml | undefined;
}

/** The declaration of one response; one of several values in order where the right one is a list. */
export function responseDeclaration(
  identifier: string,
  type: BaseType,
  correct: string | readonly string[],
  ...more: readonly Xml[]
): Xml {
  const cardinality = typeof correct === 'string' ? 'single' : 'ordered';
  const values = [correct].flat().map((value) => element('qti-value', {}, value));
  return element(
    'qti-response-declaration',
    { identifier, cardinality, 'base-type': type },
    element('qti-correct-response', {}, ...values),
    ...more,
  );
}

/** A response of which some texts are accepted, in capitals or not; each counts 1, any other 0. */
export function mappedDeclaration(identifier: string, correct: string, accepted: Iterable<string>): Xml {
  const entries = [...accepted].map((key) =>
    element('qti-map-entry', { 'map-key': key, 'mapped-value': 1, 'case-sensitive': false }),
  );
  return responseDeclaration(
    identifier,
    'string',
    correct,
    element('qti-mapping', { 'default-value': 0 }, ...entries),
  );
}

/** Whether a response is one of those accepted. */
export const isMapped = (identifier: string): Xml =>
  element('qti-gt', {}, element('qti-map-response', { identifier }), baseValue('float', '0'));

/**
 * A box to write in.
 *
 * @param what is to be written there, such as `mm`, for those who hear the page
 */
export const box = (identifier: string, length: number, what = ''): Xml =>
  element('qti-text-entry-interaction', {
    'response-identifier': identifier,
    'expected-length': length,
    'aria-label': what === '' ? 'Answer' : `Answer, ${what}`,
  });

/** `Answer: […] mm` */
export const answerLine = (...content: readonly Child[]): Xml => element('p', {}, 'Answer: ', ...content);
