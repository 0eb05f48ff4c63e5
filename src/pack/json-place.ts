import type { Position } from '../diagnostics/diagnostic.js';

const TOKENS = /"[^"\\]*(?:\\.[^"\\]*)*"|[{}[\]]|[^\s"{}[\],:]+/gs;

/**
 * Where a value stands in JSON.
 *
 * @param text JSON that has been parsed without a fault
 * @param path keys and list positions; what is not there is shown at what should hold it
 */
export function placeInJson(text: string, path: readonly PropertyKey[]): Position {
  const wanted = path.map(String);
  const open: Level[] = [];
  let best = { depth: -1, at: 0 };
  for (const { 0: token, index } of text.matchAll(TOKENS)) {
    const top = open.at(-1);
    if (token === '}' || token === ']') {
      open.pop();
      goOn(open.at(-1));
      continue;
    }
    if (top?.keyed && top.key === undefined) {
      top.key = String(JSON.parse(token));
      continue;
    }
    const depth = open.length;
    if (
      depth > best.depth &&
      depth <= wanted.length &&
      open.every((level, at) => keyOf(level) === wanted[at])
    )
      best = { depth, at: index };
    if (token === '{' || token === '[') open.push({ keyed: token === '{', key: undefined, index: 0 });
    else goOn(top);
  }
  return positionOf(text, best.at);
}

/** An object or a list that has begun. */
interface Level {
  readonly keyed: boolean;
  key: string | undefined;
  index: number;
}

/** A value has ended. */
function goOn(level: Level | undefined): void {
  if (level?.keyed) level.key = undefined;
  else if (level) level.index += 1;
}

const keyOf = ({ keyed, key, index }: Level): string | undefined => (keyed ? key : String(index));

/** @param at of a character, from 0 */
export function positionOf(text: string, at: number): Position {
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1) ?? '').length + 1 };
}
