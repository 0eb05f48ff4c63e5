import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MachineError } from '../../src/diagnostics/errors.js';
import { Printer, type PrinterOptions } from '../../src/print/printer.js';
import { lookAt } from './fingerprint.js';
import { browsersIn, renderers } from './processes.js';
import { longPage, page, workFolder } from './sample-page.js';

let work: string;
let to: string;
let printer: Printer | undefined;

beforeEach(async () => {
  work = await workFolder();
  to = join(work, 'long.pdf');
});

afterEach(async () => {
  await printer?.close();
  printer = undefined;
  await rm(work, { recursive: true });
});

const open = async (options: Partial<PrinterOptions> = {}): Promise<Printer> => {
  printer = await Printer.open({ workFolder: work, ...options });
  return printer;
};

const browsers = (): number[] => browsersIn(work).map(({ pid }) => pid);

const browser = (): number => {
  const [pid] = browsers();
  if (pid === undefined) throw new Error('no browser is running');
  return pid;
};

/** Asks again and again until there is an answer. */
async function until<T>(ask: () => T | undefined | false): Promise<T> {
  for (;;) {
    const answer = ask();
    if (answer) return answer;
    await sleep(5);
  }
}

/** Begins to print and comes back when the printing is well under way. */
async function begun(with_: Printer): Promise<{ result: Promise<unknown> }> {
  let ended = false;
  const result = with_.print({ html: longPage(), to }).finally(() => {
    ended = true;
  });
  result.catch(() => undefined);
  await until(() => renderers(browser()).length > 1); // the one it starts with, and that of our page
  await sleep(60);
  expect(ended).toBe(false);
  return { result };
}

describe.runIf(process.platform === 'linux')('a Printer', () => {
  it('prints once more when the browser is killed during a print', async () => {
    const ours = await open();
    const first = browser();
    const { result } = await begun(ours);
    kill(first);
    await expect(result).resolves.toMatchObject({ to });
    expect((await lookAt(to)).pages).toBe(60);
    expect(browser()).not.toBe(first);
  });

  it('prints once more when the process behind the page is killed, in the same browser', async () => {
    const ours = await open();
    const first = browser();
    const { result } = await begun(ours);
    const behind = renderers(first).map(({ pid }) => pid);
    expect(behind.length).toBeGreaterThan(0);
    for (const pid of behind) kill(pid);
    await expect(result).resolves.toMatchObject({ to });
    expect(browser()).toBe(first);
  });

  it('gives up when the browser is killed twice, and leaves no file', async () => {
    const ours = await open();
    const first = browser();
    const { result } = await begun(ours);
    kill(first);
    const failure = expect(result).rejects.toThrow(MachineError);
    const second = await until(() => browsers().find((pid) => pid !== first));
    await until(() => renderers(second).length > 1); // the one it starts with, and that of our page
    kill(second);
    await failure;
    await expect(result).rejects.toThrow(/cannot print .*long\.pdf|does not start|ended as it started/);
    expect((await readdir(work)).filter((name) => /pdf|html|part/.test(name))).toEqual([]);
  });

  it('ends a browser that hangs, and prints with a fresh one', async () => {
    const ours = await open({ patience: 3000 });
    const first = browser();
    const { result } = await begun(ours);
    process.kill(first, 'SIGSTOP');
    await expect(result).resolves.toMatchObject({ to });
    expect(browsers()).not.toContain(first);
  });

  it('loses no document of many when the browser is killed', async () => {
    const ours = await open();
    const jobs = Array.from({ length: 12 }, (_, n) => ({
      html: longPage(),
      to: join(work, `many-${n}.pdf`),
    }));
    let done = 0;
    const results = await ours.printAll(jobs, () => {
      done += 1;
      if (done === 3) kill(browser());
    });
    expect(results.map((result) => result.to)).toEqual(jobs.map((job) => job.to));
    for (const job of jobs) expect((await readFile(job.to, 'latin1')).trimEnd()).toMatch(/%%EOF$/);
  });

  it('takes a fresh browser after so many documents, and ends the old one', async () => {
    const ours = await open({ documentsPerBrowser: 3 });
    const first = browser();
    const jobs = Array.from({ length: 10 }, (_, n) => ({ html: page('a'), to: join(work, `worn-${n}.pdf`) }));
    expect(await ours.printAll(jobs)).toHaveLength(10);
    expect(browser()).not.toBe(first);
    await sleep(200);
    expect(browsers()).toHaveLength(1);
  });

  it('close() ends the browser and takes its files along, even during a print', async () => {
    const ours = await open();
    const { result } = await begun(ours);
    await ours.close();
    await expect(result).rejects.toThrow();
    expect(browsers()).toEqual([]);
    expect((await readdir(work)).sort()).toEqual(['sans.woff2', 'serif.woff2']);
    await expect(ours.print({ html: page('a'), to })).rejects.toThrow(/the printer is closed/);
  });
});

function kill(pid: number): void {
  expect(pid).toBeGreaterThan(1); // 0 would be ourselves
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // ended already
  }
}
