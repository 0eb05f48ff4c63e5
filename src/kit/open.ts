import { readAll } from '../reading/all.js';
import { readText } from '../reading/text.js';
import { readKit } from './read.js';
import type { Kit } from './schema.js';

/**
 * Reads and checks several kits, all of them before anything is said.
 *
 * @throws {ContentError} with every fault of every kit; {CommandError} when a file is not there
 */
export function openKits(files: readonly string[]): Kit[] {
  return readAll(files, (file) => readText(file, 'kit'), readKit);
}
