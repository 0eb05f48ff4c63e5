import { readFileSync } from 'node:fs';

const file = new URL('../../package.json', import.meta.url);

/** The release of Benchleaf that makes the files. */
export const release = (JSON.parse(readFileSync(file, 'utf8')) as { version: string }).version;
