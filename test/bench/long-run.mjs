// Prints the workbooks of 100 learners as `make` does, and tells the memory of this process and its browser
// (PSS, MiB) when its garbage has been collected: the least seen over documents 10 to 20, and over the last ten.
// To be run with --expose-gc. Arguments: a list of 100 learners, and an empty folder.
import { join } from 'node:path';
import { Printer } from '../../dist/print/printer.js';
import { copyAssets } from '../../dist/sheets/assets.js';
import { sampleTree } from './memory.mjs';
import { planOfClass } from './workbook.mjs';

const [learners, workFolder] = process.argv.slice(2);
const { documents } = planOfClass(learners);
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
    if (!first && done <= 90) return;
    globalThis.gc();
    const { pss } = sampleTree(process.pid);
    if (first) early = Math.min(early, pss);
    else late = Math.min(late, pss);
  });
} finally {
  await printer.close();
}
console.log(JSON.stringify({ early, late }));
