import type { PackingList } from './packing-list-schema.js';

type Input = PackingList['madeFrom'][number];

/** What two packing lists were made from that is not the same, in words; nothing where all is. */
export function differences(one: PackingList, other: PackingList): string[] {
  const told = [
    ...(one.release === other.release ? [] : [`by release ${one.release}, not ${other.release}`]),
    ...(one.shard.of === other.shard.of
      ? []
      : [`as part ${one.shard.number} of ${one.shard.of}, not of ${other.shard.of}`]),
    ...(same(one.course, other.course) ? [] : [`of the course ${one.course.name}, not ${other.course.name}`]),
    ...inputs(one.madeFrom, other.madeFrom),
    ...options(one.options, other.options),
    ...(one.browser === undefined || other.browser === undefined || one.browser === other.browser
      ? []
      : [`by ${one.browser}, not ${other.browser}`]),
  ];
  return told.length === 0 && one.set !== other.set ? ['from something else'] : told;
}

function inputs(one: readonly Input[], other: readonly Input[]): string[] {
  const names = (all: readonly Input[]) => all.map(({ what, name }) => `the ${what} ${name}`);
  const only = (all: readonly Input[], rest: readonly Input[]) =>
    names(all).filter((name) => !names(rest).includes(name));
  const changed = one.filter(({ what, name, sha256 }) =>
    other.some((its) => its.what === what && its.name === name && its.sha256 !== sha256),
  );
  return [
    ...names(changed).map((name) => `from another state of ${name}`),
    ...only(one, other).map((name) => `from ${name}`),
    ...only(other, one).map((name) => `without ${name}`),
  ];
}

function options(one: PackingList['options'], other: PackingList['options']): string[] {
  const keys = [...new Set([...Object.keys(one), ...Object.keys(other)])] as (keyof PackingList['options'])[];
  return keys
    .filter((key) => !same(one[key], other[key]))
    .map((key) => `with ${key} ${worded(one[key])}, not ${worded(other[key])}`);
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const worded = (value: unknown): string =>
  value === undefined ? 'as it comes' : typeof value === 'string' ? value : JSON.stringify(value);
