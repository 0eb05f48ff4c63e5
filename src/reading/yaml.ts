import { parseDocument } from 'yaml';
import { z } from 'zod';
import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { nearest } from '../diagnostics/suggest.js';
import { demandReadable } from './bounds.js';
import { bracesIn, firstAlias, oddityIn } from './oddities.js';
import { type Path, type Place, Places } from './places.js';

/** Of any file whatever the plain rules of YAML 1.2: no tags, no merging, no clever dates. */
const PLAIN = { schema: 'core', merge: false, resolveKnownTags: false } as const;
/** More faults than this are not told: the file is of another kind. */
const MOST_FAULTS = 100;
/** How often `*name` may repeat what was written before. */
const MOST_REPEATS = 50;

/** What was read, and where each part of it stands. */
export interface ReadYaml<T> {
  readonly data: T;
  readonly places: Places;
}

/** What a text is, for messages. */
export interface YamlSource {
  readonly file: string;
  /** In a word: `kit`, `lesson`, `course`. */
  readonly area: string;
  /** Line of the file on which the YAML starts; 1 unless told. */
  readonly firstLine?: number;
}

type Fault = { readonly path: Path; readonly message: string; readonly key?: string };

/**
 * Reads YAML and checks it by a schema.
 *
 * @throws {ContentError} with every fault and its place
 */
export function readYaml<S extends z.ZodType>(
  text: string,
  schema: S,
  { file, area, firstLine = 1 }: YamlSource,
): ReadYaml<z.output<S>> {
  const places = new Places(text, firstLine);
  const fault = (rule: string, message: string, place: Place, hints: string[] = []): Diagnostic => ({
    severity: 'error',
    rule: `${area}/${rule}`,
    message,
    file,
    ...place,
    hints,
  });
  const fail = (...faults: Diagnostic[]): never => {
    throw new ContentError(faults);
  };

  demandReadable(text, file, area, firstLine);
  const document = parseDocument(text, {
    ...PLAIN,
    lineCounter: places.lines,
    prettyErrors: false,
    logLevel: 'error', // what is odd is told by us, at its place
    uniqueKeys: false, // its own way takes the square of their number
  });
  places.of(document);
  const braces = bracesIn(document);
  const first = document.errors[0]?.pos[0] ?? Number.POSITIVE_INFINITY;
  if (braces && braces.at <= first)
    fail(fault(braces.rule, braces.message, places.at(braces.at), [braces.hint]));
  if (document.errors.length > 0)
    fail(
      // Later complaints mostly come of the first.
      ...document.errors.slice(0, 1).map((e) => {
        const [message, hint] = inPlainWords(e.code, e.message);
        return fault('yaml', message, places.at(e.pos[0]), [hint]);
      }),
    );

  const odd = oddityIn(document);
  if (odd) fail(fault(odd.rule, odd.message, places.at(odd.at), [odd.hint]));

  let data: unknown;
  try {
    data = document.toJS({ maxAliasCount: MOST_REPEATS });
  } catch {
    fail(
      fault('yaml', 'too much is repeated by names with a star', places.at(firstAlias(document)), [REPEAT]),
    );
  }
  const read = schema.safeParse(data);
  if (read.success) return { data: read.data, places };

  const known = knownKeys(schema);
  return fail(
    ...read.error.issues
      .flatMap((issue) => asFaults(issue, known))
      .slice(0, MOST_FAULTS)
      .map(({ path, message, key }) => {
        const others = [...known].filter((name) => name !== key);
        const near = key === undefined ? undefined : nearest(key, others);
        return fault(
          'value',
          `${path.map((part) => `${String(part)}`).join('.')}${path.length > 0 ? ': ' : ''}${message}`,
          key === undefined ? places.value(path) : places.key(path),
          near ? [`Did you mean "${near}"?`] : [],
        );
      }),
  );
}

/** An alternative that almost fitted says more than that none did. */
function asFaults(issue: z.core.$ZodIssue, known: ReadonlySet<string>): Fault[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: [...issue.path, key],
      message: known.has(key)
        ? `"${key}" does not belong here, or what it holds cannot be read`
        : `there is no "${key}" here`,
      key,
    }));
  if (issue.code === 'invalid_union') {
    const branches = issue.errors.map((branch) => branch.flatMap((one) => asFaults(one, known)));
    // A right name in the wrong alternative tells that another was meant.
    const astray = (branch: readonly Fault[]) => branch.filter(({ key = '' }) => known.has(key)).length;
    const [closest] = branches
      .filter((branch) => branch.length > 0 && branch.every((one) => one.path.length > 0))
      .sort((a, b) => astray(a) - astray(b) || a.length - b.length);
    if (closest) {
      // What is missing may only be misspelt: the unknown name says so, and where.
      const unknown = closest.filter(({ key }) => key !== undefined);
      return (unknown.length > 0 ? unknown : closest).map((one) => ({
        ...one,
        path: [...issue.path, ...one.path],
      }));
    }
    const own = /^Invalid/.test(issue.message) ? undefined : issue.message;
    return [{ path: issue.path, message: own ?? anyOf(branches.flat().map(({ message }) => message)) }];
  }
  return [{ path: issue.path, message: plainly(issue) }];
}

const MISSING = 'this is missing';
const EXPECTED = /^expected (?!one of)/;

/** `expected a number or words`, of what each alternative says. */
function anyOf(messages: readonly string[]): string {
  const [first = '', ...others] = new Set(messages);
  if (messages.every((message) => message.startsWith(MISSING))) return MISSING;
  return EXPECTED.test(first) && others.every((other) => EXPECTED.test(other))
    ? [first, ...others.map((other) => other.replace(EXPECTED, ''))].join(', or ')
    : first;
}

/** Every name that a schema knows. */
function knownKeys(schema: z.ZodType): Set<string> {
  const names = new Set<string>();
  const collect = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    const { properties } = part as { properties?: object };
    for (const name of Object.keys(properties ?? {})) names.add(name);
    Object.values(part).forEach(collect);
  };
  collect(z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }));
  return names;
}

const KINDS: Readonly<Record<string, string>> = {
  string: 'words',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list, such as [15, 16, 17]',
  object: 'names with values, such as name: value',
  record: 'names with values, such as name: value',
  tuple: 'a list of two',
};

/** What a schema says of a value, for a reader who has never seen a schema. */
function plainly(issue: z.core.$ZodIssue): string {
  const own = issue.message.replace(/^./, (first) => first.toLowerCase());
  if (!/^Invalid|^Too/.test(issue.message)) return own; // the schema's own words
  if (issue.code === 'invalid_type')
    return /received undefined$/.test(issue.message)
      ? `${MISSING}; it wants ${KINDS[issue.expected] ?? issue.expected}`
      : `expected ${KINDS[issue.expected] ?? issue.expected}`;
  if (issue.code === 'invalid_value') return `expected one of ${issue.values.map(String).join(', ')}`;
  if (issue.code === 'too_small' && issue.origin === 'array') return 'expected a list with something in it';
  if (issue.code === 'too_small') return `too small or too short: ${issue.minimum} at least`;
  if (issue.code === 'too_big') return `too large or too long: ${issue.maximum} at most`;
  return /^invalid (input|key)/.test(own) ? 'this cannot be read here' : own;
}

const REPEAT = 'Write out what is meant in each place.';
const SPACES = 'Check the spaces at the start of the line, the colons and the brackets.';

/** What the reader of YAML complains of, and the cure, for somebody who has never heard of it. */
function inPlainWords(code: string, message: string): readonly [string, string] {
  switch (code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
      return ['a colon stands inside words here', 'Put the words in quotation marks: "Gears: how far".'];
    case 'TAB_AS_INDENT':
      return ['a tab stands at the start of the line', 'Use spaces there.'];
    case 'MULTIPLE_DOCS':
      return ['this is not a file of this kind', 'Is this the right file?'];
    case 'BAD_ALIAS':
      return [
        'there is nothing that this name with a star repeats',
        'Put a word with a star in quotation marks.',
      ];
    case 'MISSING_CHAR':
      return [(message.split('\n')[0] ?? '').replace(/^./, (first) => first.toLowerCase()), SPACES];
    default:
      return ['the lines cannot be read here', SPACES];
  }
}
