import { release } from '../release.js';
import { set } from './expressions.js';
import { number } from './item.js';
import { ITEM_SCHEMA, inNamespace } from './namespaces.js';
import { element, xmlDocument } from './xml.js';

/** A lesson's problems, in their order. */
export interface Assessment {
  readonly identifier: string;
  readonly title: string;
  readonly marks: number;
  /** Each item's identifier, and its file as the test's file sees it. */
  readonly items: readonly { readonly identifier: string; readonly href: string }[];
}

/** A lesson as an assessment test of QTI 3.0: in any order, one answer to each, and feedback at once. */
export function assessmentTest({ identifier, title, marks, items }: Assessment): string {
  return xmlDocument(
    element(
      'qti-assessment-test',
      { ...inNamespace(ITEM_SCHEMA), identifier, title, 'tool-name': 'Benchleaf', 'tool-version': release },
      number('SCORE', 0, marks),
      element(
        'qti-test-part',
        { identifier: 'part_1', 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' },
        element('qti-item-session-control', { 'max-attempts': 1, 'show-feedback': true }),
        element(
          'qti-assessment-section',
          { identifier: 'section_1', title, visible: true },
          ...items.map((item) => element('qti-assessment-item-ref', { ...item })),
        ),
      ),
      element(
        'qti-outcome-processing',
        {},
        set(
          'SCORE',
          element('qti-sum', {}, element('qti-test-variables', { 'variable-identifier': 'SCORE' })),
        ),
      ),
    ),
  );
}
