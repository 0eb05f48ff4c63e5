import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** SHA-256 of texts, each told apart from the next. */
export function keyOf(texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(`${text.length}:`).update(text);
  return hash.digest('hex');
}

/** SHA-256 of the files in a folder, by their names; hidden ones are no part of what is printed. */
export async function digestOf(folder: string): Promise<string> {
  const names = (await readdir(folder)).filter((name) => !name.startsWith('.')).sort();
  const files = await Promise.all(names.map((name) => readFile(join(folder, name))));
  const hash = createHash('sha256');
  for (const [at, file] of files.entries()) hash.update(`${names[at]}:${file.length}:`).update(file);
  return hash.digest('hex');
}
