import { mkdtemp, realpath, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Printer } from '../../src/print/printer.js';
import { copyAssets } from '../../src/sheets/assets.js';

/** Prints sheets in a folder of its own, with all that they refer to. */
export interface Press {
  /** The path of the PDF. */
  print(html: string): Promise<string>;
  close(): Promise<void>;
}

export async function openPress(): Promise<Press> {
  const work = await realpath(await mkdtemp(join(tmpdir(), 'benchleaf-sheets-')));
  await copyAssets(work);
  const printer = await Printer.open({ workFolder: work });
  let count = 0;
  return {
    async print(html) {
      const to = join(work, `${count++}.pdf`);
      await printer.print({ html, to });
      return to;
    },
    async close() {
      await printer.close();
      await rm(work, { recursive: true });
    },
  };
}
