import { spawnSync } from 'node:child_process';
import { closeSync, openSync } from 'node:fs';
import { devNull } from 'node:os';
import puppeteer, { type Browser } from 'puppeteer-core';
import { MachineError } from '../diagnostics/errors.js';
import type { BrowserChoice } from './browser.js';
import { OLDEST_MAJOR } from './machine-browsers.js';
import { majorIn } from './program.js';

/** On top of puppeteer's own list, which already keeps the browser from phoning home. */
const FLAGS = [
  '--font-render-hinting=none', // letters keep their true widths
  '--host-resolver-rules=MAP * ~NOTFOUND', // no name or address leads anywhere
  '--disable-component-update',
  '--disable-domain-reliability',
  '--disable-gpu',
  '--no-default-browser-check',
  '--no-pings',
];

/** How long a browser may take to start, in milliseconds; it takes a tenth of a second, cold a few. */
const PATIENCE = 30_000;

/** Chromium refuses to run as root with its sandbox on. */
let withoutSandbox = process.getuid?.() === 0;

/**
 * Starts the browser, ready to print.
 *
 * The sandbox is left off for root, and where the kernel forbids it to an ordinary user, as most containers do.
 * What is printed has its scripts switched off and can fetch nothing, so the sandbox is the second fence, not
 * the first.
 *
 * @param profile an empty folder of its own
 * @throws {MachineError} when it does not start, or is too old
 */
export async function launch(choice: BrowserChoice, profile: string): Promise<Browser> {
  let browser: Browser;
  try {
    browser = await start(choice, profile);
  } catch (error) {
    const complaint = complaintOf(choice, profile);
    if (withoutSandbox || !/sandbox|namespace/i.test(complaint)) throw notStarted(choice, complaint, error);
    withoutSandbox = true;
    return launch(choice, profile);
  }
  const version = await browser.version();
  if (majorIn(version) >= OLDEST_MAJOR) return browser;
  await browser.close();
  throw new MachineError(`the browser ${choice.path} (${choice.from}) is too old: ${version}`, [
    `Use Chrome, Chromium or Edge ${OLDEST_MAJOR} or later; set BENCHLEAF_BROWSER to its path.`,
  ]);
}

/** puppeteer waits for ever for a browser that ends at the wrong moment of its start; we do not. */
async function start({ path, env }: BrowserChoice, profile: string): Promise<Browser> {
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), PATIENCE);
  const launched = puppeteer.launch({
    executablePath: path,
    headless: 'shell',
    args: flags(),
    env: { ...process.env, ...env },
    userDataDir: profile,
    pipe: true, // a port would be open to everyone on the machine
    waitForInitialPage: false, // we open our own
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    signal: patience.signal,
  });
  const tooLong = new Promise<never>((_, reject) => {
    const complain = (): void => reject(new Error(`no answer within ${PATIENCE / 1000} s`));
    patience.signal.addEventListener('abort', complain);
  });
  try {
    return await Promise.race([launched, tooLong]);
  } finally {
    clearTimeout(timer);
  }
}

function flags(): string[] {
  return withoutSandbox ? [...FLAGS, '--no-sandbox'] : FLAGS;
}

/**
 * What the browser says when it is started by itself: over the pipe puppeteer does not hear it. With nobody at
 * the other end of the pipe, one that starts well ends at once.
 */
function complaintOf({ path, env }: BrowserChoice, profile: string): string {
  const nobody = openSync(devNull, 'r+');
  try {
    const args = ['--headless', ...flags(), `--user-data-dir=${profile}`, '--remote-debugging-pipe'];
    const { stderr } = spawnSync(path, args, {
      env: { ...process.env, ...env },
      stdio: ['ignore', 'ignore', 'pipe', nobody, nobody],
      encoding: 'utf8',
      timeout: 10_000,
    });
    return stderr ?? '';
  } finally {
    closeSync(nobody);
  }
}

function notStarted(choice: BrowserChoice, complaint: string, error: unknown): MachineError {
  const library = /loading shared libraries: (\S+):/.exec(complaint)?.[1];
  const said = /.*(?:FATAL|shared libraries).*/.exec(complaint)?.[0] ?? (error as Error).message;
  return new MachineError(`the browser ${choice.path} (${choice.from}) does not start: ${said}`, [
    ...(library ? [`Install the system package that holds ${library}.`] : []),
    'Set BENCHLEAF_BROWSER to the path of another Chrome, Chromium or Edge.',
  ]);
}
