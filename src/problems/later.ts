/** Worked at the first call, and kept. */
export function later<T>(work: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: work() };
    return kept.value;
  };
}
