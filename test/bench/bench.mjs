// Measures, in one run: the sample pack cold and warm, pages a second for a class of 30, memory over 200 documents,
// and our own share against a bare print of the same pages by the same browser.
import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { choose } from '../../dist/pack/choose.js';
import { printedKinds } from '../../dist/pack/kinds.js';
import { planOf } from '../../dist/pack/plan.js';
import { Printer } from '../../dist/print/printer.js';
import { copyAssets } from '../../dist/sheets/assets.js';
import { barePrint } from './bare-print.mjs';
import { core } from './core.mjs';
import { watchMemory } from './memory.mjs';
import { watch as author } from './watch.mjs';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'benchleaf-bench-'));
const learners = classOf(30);
const out = ['--out', join(folder, 'out')];

/** The list of a class. */
function classOf(count) {
  const file = join(folder, `class-${count}.csv`);
  writeFileSync(file, ['name', ...Array.from({ length: count }, (_, i) => `Learner ${i + 1}`)].join('\n'));
  return file;
}

/** The command as a user runs it: its data, the seconds it took, and the peak of its process tree in MiB (PSS). */
async function run(words, env = {}) {
  const start = performance.now();
  const child = spawn(process.execPath, [MAIN, ...words, '--json'], { env: { ...process.env, ...env } });
  let data = '';
  let complaint = '';
  child.stdout.on('data', (text) => {
    data += text;
  });
  child.stderr.on('data', (text) => {
    complaint += text;
  });
  const watch = watched ? watchMemory({ root: child.pid }) : undefined;
  const code = await new Promise((resolve) => child.on('close', resolve));
  if (code !== 0) throw new Error(complaint);
  const seconds = (performance.now() - start) / 1000;
  return { ...(words[0] === 'list' ? {} : JSON.parse(data)), seconds, peak: watch?.stop().peak.pss ?? 0 };
}
let watched = false;

/** The least of several runs: what the machine does when nothing else is in its way. */
async function best(times, words) {
  const runs = [];
  for (let time = 0; time < times; time++) runs.push(await run(words));
  return runs.sort((a, b) => a.seconds - b.seconds)[0];
}

const pagesOf = ({ documents }) => documents.reduce((sum, { pages }) => sum + pages, 0);

/** Time to plan and write all HTML of a class's problem sheets, and to print it, by our printer and bare. */
async function shares() {
  const work = join(folder, 'work');
  mkdirSync(work);
  const { course, kit } = choose([]);
  const order = { course, kit, paper: 'a4', print: 'plain', learners, only: new Set(['problems']) };
  const write = () => planOf(order).documents.map((one) => ('html' in one ? one.html() : one.data()));
  await copyAssets(work);
  let own = Number.POSITIVE_INFINITY;
  let pages = [];
  for (let round = 0; round < 4; round++) {
    const start = performance.now();
    pages = write();
    await copyAssets(work);
    own = Math.min(own, (performance.now() - start) / 1000);
  }
  const files = pages.map((html, place) => {
    const file = join(work, `${place}.html`);
    writeFileSync(file, html);
    return file;
  });
  const jobs = pages.map((html, place) => ({ html, to: join(work, `ours-${place}.pdf`) }));
  const printer = await Printer.open({ workFolder: work });
  let printed = Number.POSITIVE_INFINITY;
  let bare = Number.POSITIVE_INFINITY;
  let count = 0;
  try {
    await printer.print(jobs[0]);
    for (let round = 0; round < 3; round++) {
      bare = Math.min(bare, await barePrint(files));
      const from = performance.now();
      count = (await printer.printAll(jobs)).reduce((sum, result) => sum + result.pages, 0);
      printed = Math.min(printed, (performance.now() - from) / 1000);
    }
  } finally {
    await printer.close();
  }
  return { own, printed, bare, count };
}

try {
  const cache = join(folder, 'cache');
  mkdirSync(cache);
  const cold = await run(['make', '--quiet', ...out], { XDG_CACHE_HOME: cache });
  const warm = await best(3, ['make', '--quiet', ...out]);
  const sheets = ['make', '--quiet', '--learners', learners, '--only', 'problems', ...out];
  const whole = await best(3, sheets);
  watched = true;
  const peaks = [await run(['make', '--quiet', ...out]), await run(sheets)].map(({ peak }) =>
    peak.toFixed(0),
  );
  watched = false;
  const share = await shares();
  const long = fileURLToPath(new URL('long-run.mjs', import.meta.url));
  const longFolder = join(folder, 'long');
  mkdirSync(longFolder);
  const memory = JSON.parse(
    execFileSync(process.execPath, ['--expose-gc', long, classOf(200), longFolder], { encoding: 'utf8' }),
  );
  const list = await best(5, ['list']).catch(() => undefined);
  const rate = (pages, seconds) => `${(pages / seconds).toFixed(1)} pages/s`;
  const percent = (part, all) => `${((100 * part) / all).toFixed(0)} %`;
  console.log(`machine: ${cpus().length} × ${cpus()[0]?.model}, Node ${process.version}
sample pack (${printedKinds.join(', ')}; ${pagesOf(warm)} pages)
  cold, the browser unpacked anew   ${cold.seconds.toFixed(2)} s
  warm                              ${warm.seconds.toFixed(2)} s
  peak of the process tree          ${peaks[0]} MiB
problem sheets of 30 learners (${pagesOf(whole)} pages)
  the whole command                 ${whole.seconds.toFixed(2)} s, ${rate(pagesOf(whole), whole.seconds)}
  peak of the process tree          ${peaks[1]} MiB
  bare print of the same HTML       ${share.bare.toFixed(2)} s, ${rate(share.count, share.bare)}
  our printer on the same HTML      ${share.printed.toFixed(2)} s, ${(share.printed / share.bare).toFixed(2)} of the bare print
  our own share, before the print   ${share.own.toFixed(2)} s, ${percent(share.own, share.bare)} of the bare print
live memory of the tree at sheet 10 ${memory.early.toFixed(0)} MiB, at sheet 200 ${memory.late.toFixed(0)} MiB
benchleaf list                      ${list === undefined ? '' : list.seconds.toFixed(2)} s
core, in one process, the usual of several runs
${core()}
${await author()}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
