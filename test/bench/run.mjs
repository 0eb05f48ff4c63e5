import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { watchMemory } from './memory.mjs';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

/**
 * The command as a user runs it.
 *
 * @param {readonly string[]} words
 * @param {{ env?: Record<string, string>, watched?: boolean }} [options] `watched` to look at the process tree four
 *   times a second, which costs a few per cent of the time
 * @returns what it printed as data, the seconds it took, and when watched the peak of its process tree (`peak`, MiB,
 *   PSS) and the processor time of all of it (`cpu`, seconds)
 */
export async function run(words, { env = {}, watched = false } = {}) {
  const start = performance.now();
  // What was printed before is no measure of printing.
  const anew = words[0] === 'make' ? ['--no-cache'] : [];
  const child = spawn(process.execPath, [MAIN, ...words, ...anew, '--json'], {
    env: { ...process.env, ...env },
  });
  let data = '';
  let complaint = '';
  child.stdout.on('data', (text) => {
    data += text;
  });
  child.stderr.on('data', (text) => {
    complaint += text;
  });
  const watch = watched ? watchMemory({ root: child.pid, everyMilliseconds: 250 }) : undefined;
  const code = await new Promise((resolve) => child.on('close', resolve));
  if (code !== 0) throw new Error(complaint);
  const seconds = (performance.now() - start) / 1000;
  const { pss = 0, cpu = 0 } = watch?.stop().peak ?? {};
  return { ...(words[0] === 'list' ? {} : JSON.parse(data)), seconds, peak: pss, cpu };
}

/** The least of several runs: what the machine does when nothing else is in its way. */
export async function best(times, words) {
  const runs = [];
  for (let time = 0; time < times; time++) runs.push(await run(words));
  return runs.sort((a, b) => a.seconds - b.seconds)[0];
}
