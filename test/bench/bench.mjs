// Measures, in one run: the sample pack cold and warm, pages a second for a class of 30, memory over 200 documents,
// and our own share against a bare print of the same pages by the same browser.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { choose } from '../../dist/pack/choose.js';
import { kindNames } from '../../dist/pack/kinds.js';
import { planOf } from '../../dist/pack/plan.js';
import { Printer } from '../../dist/print/printer.js';
import { copyAssets } from '../../dist/sheets/assets.js';
import { barePrint } from './bare-print.mjs';
import { sampleTree, watchMemory } from './memory.mjs';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'benchleaf-bench-'));
const learners = join(folder, 'class.csv');
writeFileSync(learners, ['name', ...Array.from({ length: 30 }, (_, i) => `Learner ${i + 1}`)].join('\n'));
const out = ['--out', join(folder, 'out')];

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
  const write = () => planOf(order).documents.map((document) => document.html());
  write(); // compiled and warmed up, as in a long run
  const start = performance.now();
  const pages = write();
  await copyAssets(work);
  const own = (performance.now() - start) / 1000;
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
  let early = 0;
  let late = 0;
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
  const second = await Printer.open({ workFolder: work });
  try {
    let done = 0;
    const many = Array.from({ length: 200 }, (_, place) => ({
      ...jobs[place % jobs.length],
      to: join(work, 'm.pdf'),
    }));
    for (const job of many) {
      await second.print(job);
      done++;
      if (done === 10) early = sampleTree(process.pid).pss;
      if (done === 200) late = sampleTree(process.pid).pss;
    }
  } finally {
    await second.close();
  }
  return { own, printed, bare, count, early, late };
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
  const list = await best(5, ['list']).catch(() => undefined);
  const rate = (pages, seconds) => `${(pages / seconds).toFixed(1)} pages/s`;
  const percent = (part, all) => `${((100 * part) / all).toFixed(0)} %`;
  console.log(`machine: ${cpus().length} × ${cpus()[0]?.model}, Node ${process.version}
sample pack (${kindNames.join(', ')}; ${pagesOf(warm)} pages)
  cold, the browser unpacked anew   ${cold.seconds.toFixed(2)} s
  warm                              ${warm.seconds.toFixed(2)} s
  peak of the process tree          ${peaks[0]} MiB
problem sheets of 30 learners (${pagesOf(whole)} pages)
  the whole command                 ${whole.seconds.toFixed(2)} s, ${rate(pagesOf(whole), whole.seconds)}
  peak of the process tree          ${peaks[1]} MiB
  bare print of the same HTML       ${share.bare.toFixed(2)} s, ${rate(share.count, share.bare)}
  our printer on the same HTML      ${share.printed.toFixed(2)} s, ${(share.printed / share.bare).toFixed(2)} of the bare print
  our own share, before the print   ${share.own.toFixed(2)} s, ${percent(share.own, share.bare)} of the bare print
memory of the tree at document 10   ${share.early.toFixed(0)} MiB, at document 200 ${share.late.toFixed(0)} MiB
benchleaf list                      ${list === undefined ? '' : list.seconds.toFixed(2)} s`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
