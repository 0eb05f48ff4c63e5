import type { Problem } from '../problems/problem.js';
import type { Key } from './key-schema.js';

/** A value of a problem, as it was drawn and as the learner is told it. */
export type GivenValue = Key['lessons'][number]['problems'][number]['values'][number];

/** Every value of a problem by the name that its words use, `teeth` or `wheel.outsideDiameter`; a list is one value. */
export function valuesGiven({ drawn, values }: Pick<Problem, 'drawn' | 'values'>): GivenValue[] {
  return flat(drawn, values, '');
}

function flat(drawn: unknown, told: unknown, name: string): GivenValue[] {
  if (isObject(drawn))
    return Object.entries(drawn).flatMap(([key, value]) =>
      flat(value, isObject(told) ? told[key] : undefined, name === '' ? key : `${name}.${key}`),
    );
  return drawn === undefined ? [] : [{ name, drawn, told: told ?? drawn } as GivenValue];
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
