/**
 * Data with another value at one place of it, all else the same.
 *
 * @param keys the way to the place, through records and lists: `['settings', '0', 'holes']`
 */
export function replaced(data: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value;
  if (Array.isArray(data))
    return data.map((one, at) => (String(at) === key ? replaced(one, rest, value) : one));
  const record = (typeof data === 'object' && data !== null ? data : {}) as Readonly<Record<string, unknown>>;
  return { ...record, [key]: replaced(record[key], rest, value) };
}
