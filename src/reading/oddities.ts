import { type Document, isAlias, isCollection, isMap, isScalar, type Node, visit } from 'yaml';
import { UNSEEN_HINT, UNSEEN_SAID, unseenIn } from './bounds.js';

/** Something that YAML allows and nobody who writes a lesson, kit or course means. */
export interface Oddity {
  /** From 0, in the YAML. */
  readonly at: number;
  readonly rule: 'yaml' | 'character' | 'name' | 'too-long';
  readonly message: string;
  readonly hint: string;
}

/** Values, lists and names one inside the other; a real file has eight. */
const DEEPEST = 20;
/** Names and values in all; a real file has a few hundred. */
const MOST = 20_000;

/** The first oddity of a document that was read without an error, or undefined. */
export function oddityIn(document: Document): Oddity | undefined {
  let met = 0;
  let found: Oddity | undefined;
  visit(document, {
    Node: (_, node, path) => {
      met += 1;
      found = met > MOST ? tooMany(node) : path.length > 2 * DEEPEST ? tooDeep(node) : oddityOf(node);
      return found ? visit.BREAK : undefined;
    },
  });
  return found;
}

/** Words that begin with double braces and stand without quotation marks: to YAML these are names of names. */
export function bracesIn(document: Document): Oddity | undefined {
  let found: Oddity | undefined;
  visit(document, {
    Collection: (_, node, path) => {
      const named = isMap(node) ? node.items.find(({ key }) => isMap(key))?.key : undefined;
      if (!named) return path.length > 2 * DEEPEST ? visit.SKIP : undefined;
      found = {
        at: startOf(named) - 1,
        rule: 'yaml',
        message: 'words that begin with a brace stand without quotation marks here',
        hint: 'Put all the words in quotation marks: "{{teeth}} teeth".',
      };
      return visit.BREAK;
    },
  });
  return found;
}

/** Where the first alias stands, `*name`, which repeats what was written before. */
export function firstAlias(document: Document): number {
  let at = 0;
  visit(document, {
    Alias: (_, node) => {
      at = startOf(node);
      return visit.BREAK;
    },
  });
  return at;
}

const startOf = (node: unknown): number => (node as Node | null)?.range?.[0] ?? 0;

const tooMany = (node: Node): Oddity => ({
  at: startOf(node),
  rule: 'too-long',
  message: `there are more than ${MOST} names and values`,
  hint: 'Is this the right file?',
});

const tooDeep = (node: Node): Oddity => ({
  at: startOf(node),
  rule: 'yaml',
  message: `more than ${DEEPEST} brackets or indents stand one inside the other here`,
  hint: 'Check the brackets and the spaces at the start of the line.',
});

function oddityOf(node: Node): Oddity | undefined {
  if ((isScalar(node) || isCollection(node)) && node.tag !== undefined)
    return {
      at: startOf(node),
      rule: 'yaml',
      message: 'a word that starts with an exclamation mark cannot stand here',
      hint: 'Put it in quotation marks.',
    };
  if (isScalar(node) && typeof node.value === 'string') {
    const unseen = unseenIn(node.value);
    if (unseen)
      return { at: startOf(node), rule: 'character', message: UNSEEN_SAID(unseen.name), hint: UNSEEN_HINT };
  }
  return isMap(node) ? oddName(node.items.map(({ key }) => key)) : undefined;
}

/** A name that stands twice, or that the program's language keeps for itself, such as `constructor`. */
function oddName(keys: readonly unknown[]): Oddity | undefined {
  const names = new Set<string>();
  for (const key of keys) {
    if (isAlias(key)) continue;
    const name = isScalar(key) ? String(key.value) : '';
    const odd = (message: string, hint: string): Oddity => ({
      at: startOf(key),
      rule: 'name',
      message,
      hint,
    });
    if (name in {}) return odd(`${name} cannot be a name`, 'Choose another.');
    if (isScalar(key) && names.has(name))
      return { ...odd('the same name stands twice', 'Keep one of them.'), rule: 'yaml' };
    names.add(name);
  }
  return undefined;
}
