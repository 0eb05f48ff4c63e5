#!/usr/bin/env node
import { setFlagsFromString } from 'node:v8';
import { run } from './program.js';

// A reader that leaves early, as `head` does, is no fault.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });

// On a large machine Node lets its memory grow to four times what is in use before it looks for what is not: 200 MiB
// more for a class of 1,000, and no sooner done.
setFlagsFromString('--heap-growing-percent=60');

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
});
