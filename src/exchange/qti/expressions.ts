import { element, type Xml } from './xml.js';

/** What a response or an outcome holds. */
export type BaseType = 'float' | 'string' | 'identifier';

/** A number in plain figures, never with an exponent. */
export function figures(value: number): string {
  const text = value.toFixed(12);
  return text.replace(/\.?0+$/, '');
}

export const variable = (identifier: string): Xml => element('qti-variable', { identifier });

export const baseValue = (type: BaseType, value: string): Xml =>
  element('qti-base-value', { 'base-type': type }, value);

/** How far from a value a response may lie, and whether just as far is near enough. */
export interface Tolerance {
  readonly by: number;
  readonly atLower: boolean;
  readonly atUpper: boolean;
}

/** Whether what a response comes to lies near a value. */
export function near(value: number, response: Xml, { by, atLower, atUpper }: Tolerance): Xml {
  return element(
    'qti-equal',
    {
      'tolerance-mode': 'absolute',
      tolerance: `${figures(by)} ${figures(by)}`,
      'include-lower-bound': atLower,
      'include-upper-bound': atUpper,
    },
    baseValue('float', figures(value)),
    response,
  );
}

/** Whether all hold; one alone needs no word for it. */
export const all = (expressions: readonly Xml[]): Xml => joined('qti-and', expressions);

/** Whether any holds. */
export const any = (expressions: readonly Xml[]): Xml => joined('qti-or', expressions);

function joined(name: string, expressions: readonly Xml[]): Xml {
  const [first, ...more] = expressions;
  if (!first) throw new Error(`${name} joins nothing`);
  return more.length === 0 ? first : element(name, {}, ...expressions);
}

/** Whether the whole of a response is of this form: a regular expression as XML Schema has them. */
export const isLike = (identifier: string, pattern: string): Xml =>
  element('qti-pattern-match', { pattern }, variable(identifier));

/** Whether a response is the very value that is declared as right. */
export const isCorrect = (identifier: string): Xml =>
  same(identifier, element('qti-correct', { identifier }));

/** Whether a response is this value. */
export const same = (identifier: string, value: Xml): Xml =>
  element('qti-match', {}, variable(identifier), value);

/** Sets an outcome. */
export const set = (identifier: string, value: Xml): Xml =>
  element('qti-set-outcome-value', { identifier }, value);
