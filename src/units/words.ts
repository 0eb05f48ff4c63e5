/** `1 hole`, `16 holes`, `2 leaves`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** `15`, `15 and 18`, `15, 18 or 21`. */
export function listInWords(words: readonly string[], join: 'and' | 'or' = 'and'): string {
  const last = words.at(-1) ?? 'none';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${join} ${last}`;
}
