import { isMap, isScalar, LineCounter, parseDocument } from 'yaml';
import { z } from 'zod';
import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { nearest } from '../diagnostics/suggest.js';
import { type Kit, kitSchema } from './schema.js';

/** Longest kit that is read, in characters; a real one has a few thousand. */
const LONGEST = 200_000;

type Fault = { readonly path: readonly PropertyKey[]; readonly message: string; readonly key?: string };

/**
 * Reads and checks a kit.
 *
 * @param file its name, for messages
 * @throws {ContentError} with every fault and its place
 */
export function readKit(text: string, file: string): Kit {
  const lines = new LineCounter();
  const fail = (diagnostics: Diagnostic[]): never => {
    throw new ContentError(diagnostics);
  };
  const at = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  const fault = (
    rule: string,
    message: string,
    start: Diagnostic['start'],
    length: number,
    hints: string[] = [],
  ) => ({ severity: 'error', rule, message, file, start, length, hints }) as const;

  if (text.length > LONGEST)
    fail([fault('kit/too-long', `a kit may have ${LONGEST} characters at most`, { line: 1, column: 1 }, 1)]);
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  if (document.errors.length > 0)
    fail(
      document.errors.map((e) =>
        fault('kit/yaml', e.message.split('\n')[0] ?? '', at(e.pos[0]), 1, [
          'Check the spaces at the start of the line, and the colons.',
        ]),
      ),
    );

  let data: unknown;
  try {
    data = document.toJS({ maxAliasCount: 50 });
  } catch (error) {
    fail([fault('kit/yaml', (error as Error).message, { line: 1, column: 1 }, 1)]);
  }
  const read = kitSchema.safeParse(data);
  if (read.success) return read.data;

  const faults = read.error.issues.flatMap<Fault>((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => ({ path: [...issue.path, key], message: `there is no "${key}" here`, key }))
      : [{ path: issue.path, message: issue.message.replace(/^./, (first) => first.toLowerCase()) }],
  );
  return fail(
    faults.map(({ path, message, key }) => {
      const [from, to] =
        key === undefined ? place(document, path) : keyPlace(document, path.slice(0, -1), key);
      const near = key === undefined ? undefined : nearest(key, knownKeys());
      const where = path.length > 0 ? `${path.map(String).join('.')}: ` : '';
      return fault(
        'kit/value',
        where + message,
        at(from),
        Math.min(to - from, 60),
        near ? [`Did you mean "${near}"?`] : [],
      );
    }),
  );
}

/** Every name a kit may use, as the schema has them. */
function knownKeys(): Set<string> {
  const names = new Set<string>();
  const collect = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    const { properties } = part as { properties?: object };
    for (const name of Object.keys(properties ?? {})) names.add(name);
    Object.values(part).forEach(collect);
  };
  collect(z.toJSONSchema(kitSchema, { io: 'input' }));
  return names;
}

/** Where the node at a path stands in the text; its nearest parent when it is missing. */
function place(document: ReturnType<typeof parseDocument>, path: readonly PropertyKey[]): [number, number] {
  for (let depth = path.length; depth >= 0; depth--) {
    const node = depth === 0 ? document.contents : document.getIn(path.slice(0, depth), true);
    const range = (node as { range?: [number, number, number] } | null | undefined)?.range;
    // A missing value deep down is shown at the first line of what should hold it.
    if (range) return depth === path.length ? [range[0], range[1]] : [range[0], range[0] + 1];
  }
  return [0, 1];
}

/** Where a key stands in the map at a path. */
function keyPlace(
  document: ReturnType<typeof parseDocument>,
  path: readonly PropertyKey[],
  key: string,
): [number, number] {
  const map = path.length === 0 ? document.contents : document.getIn(path, true);
  const pair = isMap(map) ? map.items.find((one) => isScalar(one.key) && one.key.value === key) : undefined;
  const range = isScalar(pair?.key) ? pair.key.range : undefined;
  return range ? [range[0], range[1]] : place(document, path);
}
