import { decimals } from '../calculations/working.js';
import { Fault } from './fault.js';
import type { Names } from './names.js';

const SIDES = /^(?<left>.*?)(?<sign><=|>=|!=|<|>|=)(?<right>.*)$/;

const WORDS: Readonly<Record<string, string>> = { '<=': '≤', '>=': '≥', '!=': '≠' };

/**
 * Whether relations hold: `teeth / leaves >= 5`, `a = b and c < d`, `possible`, `not possible`. Numbers are
 * equal when they differ in the last bits only.
 *
 * @throws {Fault} for an unknown name, or a side that is no arithmetic
 */
export function holds(relations: readonly string[], names: Names): boolean {
  return relations.every((relation) => partsOf(relation).every((one) => holdsOne(one, names)));
}

/** One relation taken to pieces; no sign for a bare name. */
interface Relation {
  readonly text: string;
  readonly left: string;
  readonly sign: string;
  readonly right: string;
}

const read = new Map<string, readonly Relation[]>();

function partsOf(text: string): readonly Relation[] {
  const known = read.get(text);
  if (known) return known;
  const parts = text.split(/\sand\s/).map((one): Relation => {
    const { left = '', sign = '', right = '' } = SIDES.exec(one)?.groups ?? {};
    return { text: one.trim(), left, sign, right };
  });
  read.set(text, parts);
  return parts;
}

function holdsOne(relation: Relation, names: Names): boolean {
  if (relation.sign === '') return truth(relation.text, names);
  const left = names.evaluate(relation.left);
  const right = names.evaluate(relation.right);
  const same = Math.abs(left - right) <= 1e-9 * Math.max(1, Math.abs(left), Math.abs(right));
  switch (relation.sign) {
    case '=':
      return same;
    case '!=':
      return !same;
    case '<':
      return left < right && !same;
    case '>':
      return left > right && !same;
    case '<=':
      return left < right || same;
    default:
      return left > right || same;
  }
}

function truth(relation: string, names: Names): boolean {
  const denied = /^not\s+(.*)$/.exec(relation)?.[1];
  const value = names.get(denied ?? relation);
  if (typeof value !== 'boolean')
    throw new Fault(`${relation} is neither true nor false`, [], relation, [
      'Compare two numbers, such as teeth / leaves >= 5.',
    ]);
  return denied === undefined ? value : !value;
}

/** The numbers that the sides of a relation come to: `42.36 ≤ 42.38`; true or false for a bare name. */
export function sidesInWords(relation: string, names: Names): string {
  const told = partsOf(relation).map((one) => {
    if (one.sign === '') return holdsOne(one, names) ? 'true' : 'false';
    const [left, right] = sidesOf(one, names).map((side) => decimals(side, 4));
    return `${left} ${WORDS[one.sign] ?? one.sign} ${right}`;
  });
  return told.join(' and ');
}

/** The numbers of all sides of a relation, in their order; none for bare names. */
export function numbersOfSides(relation: string, names: Names): number[] {
  return partsOf(relation).flatMap((one) => (one.sign === '' ? [] : sidesOf(one, names)));
}

const sidesOf = ({ left, right }: Relation, names: Names): number[] => [
  names.evaluate(left),
  names.evaluate(right),
];
