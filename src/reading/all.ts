import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';

/**
 * Reads several files, all of them before anything is said.
 *
 * @param read gives the value of one, or throws ContentError
 * @throws {ContentError} with every fault of every file, and their texts
 */
export function readAll<T>(
  files: readonly string[],
  textOf: (file: string) => string,
  read: (text: string, file: string) => T,
): T[] {
  const sources = new Map<string, string>();
  const faults: Diagnostic[] = [];
  const values: T[] = [];
  for (const file of files) {
    try {
      const text = textOf(file);
      sources.set(file, text);
      values.push(read(text, file));
    } catch (error) {
      if (!(error instanceof ContentError)) throw error;
      faults.push(...error.diagnostics);
    }
  }
  if (faults.length > 0) throw new ContentError(faults, sources);
  return values;
}
