// Measures, in one run: the sample pack cold and warm; the workbooks of classes of 1 and 30 (with `--long` of 300 and
// 1,000 as well); memory over 100 documents; our own share against a bare print of the same pages by the same browser.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { printedKinds } from '../../dist/pack/kinds.js';
import { Printer } from '../../dist/print/printer.js';
import { copyAssets } from '../../dist/sheets/assets.js';
import { barePrint } from './bare-print.mjs';
import { classes } from './classes.mjs';
import { core } from './core.mjs';
import { best, run } from './run.mjs';
import { watch as author } from './watch.mjs';
import { classOf, planOfClass } from './workbook.mjs';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-bench-'));
const out = ['--out', join(folder, 'out')];

const pagesOf = ({ documents }) => documents.reduce((sum, { pages }) => sum + pages, 0);

/** Time to plan and write all HTML of a class's problem sheets, and to print it, by our printer and bare. */
async function shares() {
  const work = join(folder, 'work');
  mkdirSync(work);
  const learners = classOf(30, folder);
  const write = () => planOfClass(learners).documents.map((one) => ('html' in one ? one.html() : one.data()));
  await copyAssets(work);
  const own = { seconds: Number.POSITIVE_INFINITY, cpu: Number.POSITIVE_INFINITY };
  let pages = [];
  for (let round = 0; round < 4; round++) {
    const start = performance.now();
    const before = process.cpuUsage();
    pages = write();
    await copyAssets(work);
    const { user, system } = process.cpuUsage(before);
    own.seconds = Math.min(own.seconds, (performance.now() - start) / 1000);
    own.cpu = Math.min(own.cpu, (user + system) / 1e6);
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
      bare = Math.min(bare, (await barePrint(files)).seconds);
      const from = performance.now();
      count = (await printer.printAll(jobs)).reduce((sum, result) => sum + result.pages, 0);
      printed = Math.min(printed, (performance.now() - from) / 1000);
    }
  } finally {
    await printer.close();
  }
  const { cpu } = await barePrint(files, true);
  return { own, printed, bare: { seconds: bare, cpu }, count };
}

try {
  const cache = join(folder, 'cache');
  mkdirSync(cache);
  const cold = await run(['make', '--quiet', ...out], { env: { XDG_CACHE_HOME: cache } });
  const warm = await best(3, ['make', '--quiet', ...out]);
  const one = await best(3, ['make', '16-simple-indexing', '--only', 'handout', '--quiet', ...out]);
  const { peak } = await run(['make', '--quiet', ...out], { watched: true });
  console.log(`machine: ${cpus().length} × ${cpus()[0]?.model}, Node ${process.version}`);
  await classes(folder, { long: process.argv.includes('--long') });
  const share = await shares();
  const long = fileURLToPath(new URL('long-run.mjs', import.meta.url));
  const longFolder = join(folder, 'long');
  mkdirSync(longFolder);
  const memory = JSON.parse(
    execFileSync(process.execPath, ['--expose-gc', long, classOf(100, folder), longFolder], {
      encoding: 'utf8',
    }),
  );
  const list = await best(5, ['list']).catch(() => undefined);
  const rate = (pages, seconds) => `${(pages / seconds).toFixed(1)} pages/s`;
  const percent = (part, all) => `${((100 * part) / all).toFixed(0)} %`;
  console.log(`sample pack (${printedKinds.join(', ')}; ${pagesOf(warm)} pages)
  cold, the browser unpacked anew   ${cold.seconds.toFixed(2)} s
  warm                              ${warm.seconds.toFixed(2)} s
  peak of the process tree          ${peak.toFixed(0)} MiB
handout of one lesson, warm         ${one.seconds.toFixed(2)} s
workbooks of 30 learners (${share.count} pages), in this process
  bare print of the same HTML       ${share.bare.seconds.toFixed(2)} s, ${rate(share.count, share.bare.seconds)}, ${share.bare.cpu.toFixed(2)} s of the processors
  our printer on the same HTML      ${share.printed.toFixed(2)} s, ${(share.printed / share.bare.seconds).toFixed(2)} of the bare print
  our own share, before the print   ${share.own.seconds.toFixed(2)} s, ${percent(share.own.seconds, share.bare.seconds)} of the bare print by the clock, on one processor of ${cpus().length}
                                    ${share.own.cpu.toFixed(2)} s of the processors, ${percent(share.own.cpu, share.bare.cpu)} of the bare print’s
live memory of the tree at sheet 10 ${memory.early.toFixed(0)} MiB, at sheet 100 ${memory.late.toFixed(0)} MiB
benchleaf list                      ${list === undefined ? '' : list.seconds.toFixed(2)} s
core, in one process, the usual of several runs
${core()}
${await author()}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
