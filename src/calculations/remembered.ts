/** A function of what a calculation is given that works each case once, however many proofs ask. */
export function remembered<G extends object, T>(work: (given: G) => T): (given: G) => T {
  const known = new WeakMap<G, { readonly result: T }>();
  return (given) => {
    const before = known.get(given);
    if (before) return before.result;
    const result = work(given);
    known.set(given, { result });
    return result;
  };
}
