// Measures an author's loop: one handout from nothing, and the same again each time its lesson is saved.
import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const LESSON = fileURLToPath(new URL('../../lessons/06-blank-and-pinion-sizes/lesson.md', import.meta.url));
const TIMES = 10;

/** Seconds that the processor has worked for children that have ended: what else the machine does is not in them. */
function processorTime() {
  const fields = readFileSync('/proc/self/stat', 'utf8').split(') ')[1].split(' ');
  return (Number(fields[13]) + Number(fields[14])) / 100;
}

/** Seconds by the clock and of the processor for a handout, each the least of several runs. */
function coldStart(folder) {
  const words = [MAIN, 'make', 'gears', '--only', 'handout', '--quiet'];
  const runs = Array.from({ length: TIMES }, () => {
    const [start, before] = [performance.now(), processorTime()];
    execFileSync(process.execPath, words, { cwd: folder });
    return { wall: (performance.now() - start) / 1000, processor: processorTime() - before };
  });
  const least = (what) => Math.min(...runs.map((run) => run[what]));
  return { wall: least('wall'), processor: least('processor') };
}

/** Seconds from a save until the handout lies in its place: the least of several saves, and the one in the middle. */
async function warmWatch(folder) {
  const words = [MAIN, 'make', 'gears', '--only', 'handout', '--watch'];
  const child = spawn(process.execPath, words, { cwd: folder, stdio: ['ignore', 'pipe', 'inherit'] });
  const lesson = join(folder, 'gears/lesson.md');
  const saved = [];
  let before = performance.now();
  let said = '';
  const done = new Promise((resolve) => child.on('close', resolve));
  child.stdout.on('data', (data) => {
    said += data;
    if (!/(Ctrl-C ends\.| s)\n$/.test(said)) return;
    if (said.endsWith(' s\n')) saved.push((performance.now() - before) / 1000);
    said = '';
    if (saved.length === TIMES) child.kill('SIGINT');
    else {
      before = performance.now();
      writeFileSync(
        lesson,
        readFileSync(lesson, 'utf8').replace(/^title: .*/m, `title: Sizes ${saved.length}`),
      );
    }
  });
  await done;
  saved.sort((a, b) => a - b);
  return { least: saved[0], middle: saved[saved.length >> 1] };
}

/** What an author waits for, a line each. */
export async function watch() {
  const folder = mkdtempSync(join(tmpdir(), 'benchleaf-bench-watch-'));
  try {
    mkdirSync(join(folder, 'gears'));
    writeFileSync(join(folder, 'gears/lesson.md'), readFileSync(LESSON));
    const cold = coldStart(folder);
    const warm = await warmWatch(folder);
    return `a handout of one lesson, from nothing ${cold.wall.toFixed(2)} s, ${cold.processor.toFixed(2)} s of the processor
  again each time it is saved (watch) ${warm.least.toFixed(2)} s, in the middle ${warm.middle.toFixed(2)} s`;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
