import { sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { MachineError } from '../diagnostics/errors.js';

const OWN = fileURLToPath(new URL('../../', import.meta.url));
const NO_MODULE = ['MODULE_NOT_FOUND', 'ERR_MODULE_NOT_FOUND'];

/**
 * What to say when a file of the program's own is not there, such as a font, as after an installation that was cut
 * short; undefined for any other error.
 */
export function missingPart(error: unknown): MachineError | undefined {
  const { code = '', path = '', message } = error as NodeJS.ErrnoException;
  const part = NO_MODULE.includes(code)
    ? /'([^']+)'/.exec(message)?.[1]
    : code === 'ENOENT' && (path.startsWith(OWN) || path.includes(`${sep}node_modules${sep}`))
      ? path
      : undefined;
  if (part === undefined) return undefined;
  return new MachineError(`a part of Benchleaf is missing: ${part}`, ['Install it again: npm ci']);
}
