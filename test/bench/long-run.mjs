// Prints the problem sheets of 200 learners as `make` does, and tells the memory of this process and its browser
// (PSS, MiB) when its garbage has been collected: the least seen over documents 10 to 20, and over the last ten.
// To be run with --expose-gc. Arguments: a list of 200 learners, and an empty folder.
import { join } from 'node:path';
import { choose } from '../../dist/pack/choose.js';
import { planOf } from '../../dist/pack/plan.js';
import { Printer } from '../../dist/print/printer.js';
import { copyAssets } from '../../dist/sheets/assets.js';
import { sampleTree } from './memory.mjs';

const [learners, workFolder] = process.argv.slice(2);
const { course, kit } = choose([]);
const order = { course, kit, paper: 'a4', print: 'plain', learners, only: new Set(['problems']) };
const { documents } = planOf(order);
await copyAssets(workFolder);

function* jobs() {
  for (const [place, document] of documents.entries())
    yield { html: document.html(), to: join(workFolder, `${place}.pdf`) };
}

let done = 0;
let early = Number.POSITIVE_INFINITY;
let late = Number.POSITIVE_INFINITY;
const printer = await Printer.open({ workFolder });
try {
  await printer.printAll(jobs(), () => {
    done++;
    const first = done >= 10 && done < 20;
    if (!first && done <= 190) return;
    globalThis.gc();
    const { pss } = sampleTree(process.pid);
    if (first) early = Math.min(early, pss);
    else late = Math.min(late, pss);
  });
} finally {
  await printer.close();
}
console.log(JSON.stringify({ early, late }));
