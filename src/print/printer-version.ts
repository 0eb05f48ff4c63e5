import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const HERE = new URL('.', import.meta.url);

/**
 * Changes whenever anything does that could make the same page print otherwise, the browser apart: this room's own
 * program with its settings, and what drives the browser. Nobody has to remember to count it up.
 */
export const printerVersion: string = (() => {
  const hash = createHash('sha256');
  for (const name of readdirSync(HERE).sort())
    if (/(?<!\.d)\.[jt]s$/.test(name)) hash.update(name).update(readFileSync(new URL(name, HERE)));
  const { version } = createRequire(import.meta.url)('puppeteer-core/package.json') as { version: string };
  return hash.update(version).digest('hex');
})();
