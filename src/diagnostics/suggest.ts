/** The known name nearest to a mistyped one, or undefined when none is near (more than a third of it differs). */
export function nearest(typed: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.max(1, Math.floor(typed.length / 3)) + 1;
  for (const name of known) {
    const steps = editDistance(typed.toLowerCase(), name.toLowerCase());
    if (steps < least) [best, least] = [name, steps];
  }
  return best;
}

/** Levenshtein's distance: single-letter insertions, deletions and changes from one word to the other. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, change));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
