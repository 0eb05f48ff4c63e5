import type { Expected } from '../../problems/expected.js';
import type { PortableOption } from '../../sheets/portable.js';
import type { Entry } from './entry.js';
import { choiceEntry, orderEntry } from './lettered-entry.js';
import { movesEntry } from './moves-entry.js';
import { numberEntry, numbersEntry } from './number-entry.js';
import { setEntry } from './set-entry.js';
import { wordEntry } from './word-entry.js';

type Makers = {
  readonly [K in Expected['kind']]: (
    expects: Extract<Expected, { kind: K }>,
    id: string,
    options: readonly PortableOption[],
  ) => Entry;
};

const makers: Makers = {
  number: numberEntry,
  numbers: numbersEntry,
  moves: movesEntry,
  word: wordEntry,
  set: setEntry,
  choice: choiceEntry,
  order: orderEntry,
};

/**
 * The entry for what is expected.
 *
 * @param id of its response; where it has several, each has this and a number after it
 * @param options where it is answered by letters
 */
export function entryFor(expects: Expected, id: string, options: readonly PortableOption[]): Entry {
  const make = makers[expects.kind] as (
    expects: Expected,
    id: string,
    options: readonly PortableOption[],
  ) => Entry;
  return make(expects, id, options);
}
