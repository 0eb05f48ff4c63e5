import { catalogue } from '../calculations/catalogue.js';
import type { ProblemDeclaration, WorkingDeclaration } from '../problems/schema.js';
import type { FrontMatter } from './schema.js';

/** What a text may name: each name, with what may stand after its dot. */
export type Vocabulary = ReadonlyMap<string, ReadonlySet<string>>;

const KIT = new Set(['name', 'head', 'units']);

/** What the body of a lesson may name. */
export function bodyVocabulary({ example, works }: FrontMatter): Vocabulary {
  return new Map([['kit', KIT], ...plain(Object.keys(example)), ...ofWorkings(works)]);
}

/** What the words of a problem may name. */
export function problemVocabulary({ vary, calculation, works }: ProblemDeclaration): Vocabulary {
  const bare = calculation === undefined ? [] : keysOf(calculation);
  return new Map([['kit', KIT], ...plain(bare), ...plain(Object.keys(vary)), ...ofWorkings(works)]);
}

function ofWorkings(works: Readonly<Record<string, WorkingDeclaration>>): [string, ReadonlySet<string>][] {
  return Object.entries(works).map(([name, one]) => [
    name,
    new Set('calculation' in one && !('among' in one) ? keysOf(String(one.calculation)) : []),
  ]);
}

const plain = (names: readonly string[]): [string, ReadonlySet<string>][] =>
  names.map((name) => [name, new Set()]);

/** What a calculation is given and finds; none for a name that is not in the catalogue, which is told elsewhere. */
function keysOf(name: string): string[] {
  const calculation = catalogue.find((one) => one.name === name);
  return calculation ? [...Object.keys(calculation.given), ...Object.keys(calculation.found)] : [];
}
