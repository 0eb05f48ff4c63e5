/** Steps in which a change of sign is looked for. */
const STEPS = 24;

/** Each place from 0 to an end where a function passes through nought: Newton's method between bounds. */
export function rootsOf(f: (u: number) => number, slope: (u: number) => number, end: number): number[] {
  const roots: number[] = [];
  let [from, before] = [0, f(0)];
  for (let step = 1; step <= STEPS; step++) {
    const to = (end * step) / STEPS;
    const value = f(to);
    if (before * value <= 0 && before !== value) roots.push(root(f, slope, from, to, before));
    [from, before] = [to, value];
  }
  return roots;
}

function root(
  f: (u: number) => number,
  slope: (u: number) => number,
  from: number,
  to: number,
  atFrom: number,
): number {
  let [low, high] = [from, to];
  let u = (low + high) / 2;
  for (let round = 0; round < 60; round++) {
    const value = f(u);
    if (value === 0) return u;
    if (value * atFrom > 0) low = u;
    else high = u;
    const next = u - value / slope(u);
    const kept = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(kept - u) <= 1e-16 * Math.abs(u)) return kept;
    u = kept;
  }
  return u;
}
