import type { Node } from './xml-reader.js';

/**
 * The shape of the elements that our packages use, as the published binding of QTI 3.0 (1EdTech, Assessment, Section
 * and Item, version 3.0, and its profile of Content Packaging 1.2) has it: which attributes must be there, which may,
 * and what may stand inside, in which order. This is no schema: it knows the elements below and no others.
 */
interface Shape {
  readonly must: readonly string[];
  readonly may?: readonly string[];
  /** The names of the elements inside, each with a space after it. */
  readonly inside: RegExp;
  readonly text?: boolean;
}

const VALUE =
  '(?:qti-(?:and|or|match|gt|sum|subtract|divide|equal|pattern-match|map-response|variable|correct|base-value|ordered|test-variables) )';
const RULE = '(?:qti-(?:response-condition|set-outcome-value) )';
const INLINE = '(?:span|strong|em|code|br|img|math|qti-text-entry-interaction) ';
const BLOCK = '(?:p|div|ul|ol|table|pre|blockquote|h[1-6]|hr|qti-choice-interaction|qti-order-interaction) ';
const INTERACTIONS = '|qti-choice-interaction|qti-order-interaction';
const only = (pattern: string): RegExp => new RegExp(`^${pattern}$`);
const EMPTY = only('');
const inline: Shape = { must: [], may: ['class'], inside: only(`(?:${INLINE})*`), text: true };
const ROOT = ['xmlns', 'xmlns:xsi', 'xsi:schemaLocation'];

export const QTI_SHAPES: Readonly<Record<string, Shape>> = {
  'qti-assessment-item': {
    must: [...ROOT, 'identifier', 'title', 'time-dependent'],
    may: ['label', 'adaptive', 'xml:lang', 'tool-name', 'tool-version'],
    inside: only(
      '(?:qti-response-declaration )+(?:qti-outcome-declaration )+qti-item-body qti-response-processing (?:qti-modal-feedback )+',
    ),
  },
  'qti-response-declaration': {
    must: ['identifier', 'cardinality', 'base-type'],
    inside: only('qti-correct-response (?:qti-mapping )?'),
  },
  'qti-correct-response': { must: [], inside: only('(?:qti-value )+') },
  'qti-default-value': { must: [], inside: only('(?:qti-value )+') },
  'qti-value': { must: [], inside: EMPTY, text: true },
  'qti-mapping': { must: ['default-value'], inside: only('(?:qti-map-entry )+') },
  'qti-map-entry': { must: ['map-key', 'mapped-value'], may: ['case-sensitive'], inside: EMPTY },
  'qti-outcome-declaration': {
    must: ['identifier', 'cardinality', 'base-type'],
    may: ['normal-maximum'],
    inside: only('(?:qti-default-value )?'),
  },
  'qti-item-body': { must: [], inside: only(`(?:${BLOCK})+`) },
  'qti-text-entry-interaction': {
    must: ['response-identifier'],
    may: ['expected-length', 'aria-label'],
    inside: EMPTY,
  },
  'qti-choice-interaction': {
    must: ['response-identifier', 'max-choices'],
    may: ['shuffle'],
    inside: only('(?:qti-simple-choice )+'),
  },
  'qti-order-interaction': {
    must: ['response-identifier'],
    may: ['shuffle'],
    inside: only('(?:qti-simple-choice )+'),
  },
  'qti-simple-choice': { must: ['identifier'], inside: only(`(?:${INLINE}|${BLOCK})*`), text: true },
  'qti-response-processing': { must: [], inside: only(`${RULE}+`) },
  'qti-response-condition': {
    must: [],
    inside: only('qti-response-if (?:qti-response-else-if )*(?:qti-response-else )?'),
  },
  'qti-response-if': { must: [], inside: only(`${VALUE}${RULE}*`) },
  'qti-response-else-if': { must: [], inside: only(`${VALUE}${RULE}*`) },
  'qti-response-else': { must: [], inside: only(`${RULE}*`) },
  'qti-set-outcome-value': { must: ['identifier'], inside: only(VALUE) },
  'qti-and': { must: [], inside: only(`${VALUE}+`) },
  'qti-or': { must: [], inside: only(`${VALUE}+`) },
  'qti-ordered': { must: [], inside: only('(?:qti-base-value )+') },
  'qti-sum': { must: [], inside: only(`${VALUE}+`) },
  'qti-match': { must: [], inside: only(`${VALUE}{2}`) },
  'qti-gt': { must: [], inside: only(`${VALUE}{2}`) },
  'qti-subtract': { must: [], inside: only(`${VALUE}{2}`) },
  'qti-divide': { must: [], inside: only(`${VALUE}{2}`) },
  'qti-equal': {
    must: ['tolerance-mode'],
    may: ['tolerance', 'include-lower-bound', 'include-upper-bound'],
    inside: only(`${VALUE}{2}`),
  },
  'qti-pattern-match': { must: ['pattern'], inside: only(VALUE) },
  'qti-map-response': { must: ['identifier'], inside: EMPTY },
  'qti-variable': { must: ['identifier'], inside: EMPTY },
  'qti-correct': { must: ['identifier'], inside: EMPTY },
  'qti-base-value': { must: ['base-type'], inside: EMPTY, text: true },
  'qti-test-variables': { must: ['variable-identifier'], inside: EMPTY },
  'qti-modal-feedback': {
    must: ['outcome-identifier', 'identifier', 'show-hide'],
    may: ['title'],
    inside: only('qti-content-body '),
  },
  // Feedback may hold no interaction.
  'qti-content-body': {
    must: [],
    inside: only(`(?:${BLOCK.replace(INTERACTIONS, '')})+`),
  },
  'qti-assessment-test': {
    must: [...ROOT, 'identifier', 'title'],
    may: ['tool-name', 'tool-version'],
    inside: only('(?:qti-outcome-declaration )*(?:qti-test-part )+(?:qti-outcome-processing )?'),
  },
  'qti-test-part': {
    must: ['identifier', 'navigation-mode', 'submission-mode'],
    inside: only('(?:qti-item-session-control )?(?:qti-assessment-section )+'),
  },
  'qti-item-session-control': { must: [], may: ['max-attempts', 'show-feedback'], inside: EMPTY },
  'qti-assessment-section': {
    must: ['identifier', 'title', 'visible'],
    inside: only('(?:qti-assessment-item-ref )+'),
  },
  'qti-assessment-item-ref': { must: ['identifier', 'href'], inside: EMPTY },
  'qti-outcome-processing': { must: [], inside: only('(?:qti-set-outcome-value )+') },
  p: inline,
  // An example stands before the question: nothing in it is answered.
  div: { must: [], may: ['class'], inside: only(`(?:${BLOCK.replace(INTERACTIONS, '')})+`) },
  span: inline,
  strong: inline,
  em: inline,
  code: inline,
  pre: inline,
  br: { must: [], inside: EMPTY },
  img: { must: ['src', 'alt'], inside: EMPTY },
  table: { must: [], inside: only('thead (?:tbody )?') },
  thead: { must: [], inside: only('(?:tr )+') },
  tbody: { must: [], inside: only('(?:tr )+') },
  tr: { must: [], inside: only('(?:th |td )+') },
  th: { ...inline, may: ['scope'] },
  td: inline,
  ul: { must: [], inside: only('(?:li )+') },
  ol: { must: [], may: ['start'], inside: only('(?:li )+') },
  li: { must: [], inside: only(`(?:${INLINE}|${BLOCK})*`), text: true },
};

export const PACKAGE_SHAPES: Readonly<Record<string, Shape>> = {
  manifest: { must: [...ROOT, 'identifier'], inside: only('metadata organizations resources ') },
  metadata: { must: [], inside: only('schema schemaversion ') },
  schema: { must: [], inside: EMPTY, text: true },
  schemaversion: { must: [], inside: EMPTY, text: true },
  organizations: { must: [], inside: EMPTY },
  resources: { must: [], inside: only('(?:resource )+') },
  resource: { must: ['identifier', 'type', 'href'], inside: only('(?:file )+(?:dependency )*') },
  file: { must: ['href'], inside: EMPTY },
  dependency: { must: ['identifierref'], inside: EMPTY },
};

/** What is wrong with the shape of an element and all that is in it. */
export function misshapen(node: Node, namespace: string, shapes: Readonly<Record<string, Shape>>): string[] {
  if (node.namespace === 'http://www.w3.org/1998/Math/MathML' && node.name === 'math') return [];
  const shape = Object.hasOwn(shapes, node.name) ? shapes[node.name] : undefined;
  if (node.namespace !== namespace || !shape) return [`<${node.name}> of ${node.namespace} is not known`];
  const told = Object.keys(node.attributes);
  const children = node.children.filter((child) => typeof child !== 'string') as Node[];
  const names = children.map(({ name }) => `${name} `).join('');
  return [
    ...shape.must.filter((key) => !told.includes(key)).map((key) => `<${node.name}> lacks ${key}`),
    ...told
      .filter((key) => !shape.must.includes(key) && !shape.may?.includes(key))
      .map((key) => `<${node.name}> has ${key}`),
    ...(shape.inside.test(names) ? [] : [`<${node.name}> holds ${names}`]),
    ...(children.length < node.children.length && !shape.text ? [`<${node.name}> holds text`] : []),
    ...children.flatMap((child) => misshapen(child, namespace, shapes)),
  ];
}
