/** Longer than this nobody's name is, and to compare it would take long. */
const LONGEST = 80;

/** The known name nearest to a mistyped one, or undefined when none is near (more than two fifths of it differ). */
export function nearest(typed: string, known: Iterable<string>): string | undefined {
  if (typed.length > LONGEST) return undefined;
  let best: string | undefined;
  let least = Math.max(1, Math.round(typed.length * 0.4)) + 1;
  for (const name of known) {
    if (Math.abs(name.length - typed.length) >= least) continue; // so many letters have to be put in
    const steps = editDistance(typed.toLowerCase(), name.toLowerCase());
    if (steps < least) [best, least] = [name, steps];
  }
  return best;
}

/** Steps from one word to the other: letters put in, left out, changed, or swapped with their neighbour. */
function editDistance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    const above = rows[i - 1] ?? [];
    for (let j = 1; j <= b.length; j++) {
      const change = (above[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = swapped ? (rows[i - 2]?.[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY;
      row.push(Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, change, swap));
    }
    rows.push(row);
  }
  return rows[a.length]?.[b.length] ?? 0;
}
