import { rm } from 'node:fs/promises';
import { setImmediate as turn } from 'node:timers/promises';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../src/print/browser.js';
import { Press } from '../../src/print/press.js';
import { browsersIn, renderers } from './processes.js';
import { longPage, page, workFolder } from './sample-page.js';

let work: string;
let press: Press;

beforeAll(async () => {
  work = await workFolder();
  press = await Press.open(await findBrowser(), work);
});

afterAll(async () => {
  await press.close();
  await rm(work, { recursive: true });
});

async function collect(): Promise<void> {
  setFlagsFromString('--expose-gc');
  const gc = runInNewContext('gc') as () => void;
  for (let round = 0; round < 3; round++) {
    await turn();
    gc();
  }
}

/** MiB of the process that has laid out most. */
const most = (): number =>
  Math.max(
    ...browsersIn(work)
      .flatMap(({ pid }) => renderers(pid))
      .map(({ memory }) => memory),
  );

describe('a press that prints one document after another', () => {
  it('keeps no more than the last', async () => {
    const printed: WeakRef<Buffer>[] = [];
    for (let n = 0; n < 6; n++) printed.push(new WeakRef(await press.print(page(`document ${n}`), 30_000)));
    await collect();
    expect(printed.filter((one) => one.deref() !== undefined).length).toBeLessThanOrEqual(1);
  });

  it('takes hardly more memory for the fifteenth than for the sixth', async () => {
    const taken: number[] = [];
    for (let n = 0; n < 15; n++) {
      await press.print(longPage(), 30_000);
      taken.push(most());
    }
    expect(taken.every(Number.isFinite)).toBe(true);
    expect(Math.max(...taken.slice(12))).toBeLessThan(1.25 * Math.max(...taken.slice(0, 6)));
  });
});
