import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './run.mjs';
import { classOf, LESSONS } from './workbook.mjs';

/** Classes that are always measured, and those that take minutes. */
const USUAL = [1, 30];
const LONG = [300, 1000];

/** Prints the workbooks of classes, each by the command; a line of the table as soon as a class is done. */
export async function classes(folder, { long }) {
  console.log('workbooks of a class (13 pages, some 90 formulas, 3 figures for each learner)');
  console.log('  learners   pages   seconds   pages/s   processor s   most memory');
  const rows = [];
  for (const count of long ? [...USUAL, ...LONG] : USUAL) {
    const out = join(folder, 'class');
    const words = ['make', ...LESSONS, '--quiet', '--learners', classOf(count, folder), '--only', 'problems'];
    const { documents, seconds, peak, cpu } = await run([...words, '--out', out], { watched: true });
    rmSync(out, { recursive: true });
    const pages = documents.reduce((sum, one) => sum + one.pages, 0);
    const cells = [count, pages, seconds.toFixed(1), (pages / seconds).toFixed(1), cpu.toFixed(1)];
    const widths = [10, 8, 10, 10, 14];
    console.log(
      `${cells.map((cell, at) => String(cell).padStart(widths[at])).join('')}  ${peak.toFixed(0).padStart(8)} MiB`,
    );
    rows.push({ count, seconds, cpu, peak });
  }
  for (const [at, next] of rows.entries()) {
    const before = rows[at - 1];
    if (!before) continue;
    const each = (key) => (next[key] - before[key]) / (next.count - before.count);
    const told = `${(1000 * each('seconds')).toFixed(0)} ms, ${(1000 * each('cpu')).toFixed(0)} ms of processor, ${each('peak').toFixed(2)} MiB`;
    console.log(`  from ${before.count} to ${next.count}, for one learner more: ${told}`);
  }
}
