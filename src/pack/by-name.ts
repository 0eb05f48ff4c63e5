import type { CommandError } from '../diagnostics/errors.js';

/**
 * What is made of some kinds: of those that are named, or of all. A kind of which nothing comes is left out.
 *
 * @throws {CommandError} where it was named
 */
export function madeByName<Kind extends { readonly name: string }, Made>(
  all: readonly Kind[],
  names: readonly string[] | undefined,
  make: (kind: Kind) => readonly Made[],
  refusal: (kind: Kind) => CommandError,
): Made[] {
  const wanted = names === undefined ? all : all.filter(({ name }) => names.includes(name));
  return wanted.flatMap((kind) => {
    const made = make(kind);
    if (made.length === 0 && names !== undefined) throw refusal(kind);
    return made;
  });
}
