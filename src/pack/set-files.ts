import { createHash } from 'node:crypto';
import { createReadStream, lstatSync, readdirSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';
import { because } from '../print/disk.js';

/** What systems put into folders by themselves; what is hidden counts as such too. */
const OF_THE_SYSTEM = ['desktop.ini', 'thumbs.db'];

/** Every file below a folder, by its name with `/` between the parts; links as they are, and not followed. */
export function filesIn(folder: string, below = ''): string[] {
  return readdirSync(join(folder, below), { withFileTypes: true })
    .filter(({ name }) => !name.startsWith('.') && !OF_THE_SYSTEM.includes(name.toLowerCase()))
    .flatMap((entry) => {
      const name = below === '' ? entry.name : `${below}/${entry.name}`;
      return entry.isDirectory() ? filesIn(folder, name) : [name];
    })
    .sort();
}

/** What a file is, or why it cannot be what it should. */
export type State =
  | { readonly problem?: undefined; readonly sha256: string }
  | { readonly problem: string; readonly there: boolean };

/**
 * @param name a safe one
 * @param size that it should have, in bytes; one of another size is not read
 * @throws {MachineError} when it may not be read
 */
export async function stateOf(folder: string, name: string, size: number): Promise<State> {
  const path = join(folder, name);
  const about = lstatSync(path, { throwIfNoEntry: false });
  if (!about) return { problem: 'is missing', there: false };
  if (about.isSymbolicLink() || realpathSync(path) !== join(realpathSync(folder), name))
    return { problem: 'is a link that leads elsewhere', there: true };
  if (!about.isFile()) return { problem: 'is no file', there: true };
  if (about.size !== size)
    return { problem: `was altered: it has ${about.size} bytes, and had ${size}`, there: true };
  const hash = createHash('sha256');
  try {
    for await (const piece of createReadStream(path)) hash.update(piece as Buffer);
  } catch (error) {
    throw new MachineError(`cannot read ${path}: ${because(error)}`);
  }
  return { sha256: hash.digest('hex') };
}
