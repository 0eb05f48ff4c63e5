/** A value as a reader expects it: a number without binary dust, a list with commas. */
export function inWords(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'possible' : 'not possible';
  if (typeof value === 'number') return String(Number(value.toPrecision(9))).replace('-', '−');
  return Array.isArray(value) ? listInWords(value.map(inWords)) : String(value);
}

/** `15`, `15 and 18`, `15, 18 and 21`. */
export function listInWords(words: readonly string[]): string {
  const last = words.at(-1) ?? 'none';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** `1 turn`, `2 turns`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
