import { homedir } from 'node:os';
import { join } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';
import { bundledBrowser } from './bundled.js';
import { browserOnMachine } from './machine-browsers.js';
import { isProgram } from './program.js';

/** A browser to print with. */
export interface BrowserChoice {
  /** Absolute path of the program. */
  readonly path: string;
  /** Where it was found, for a reader: `BENCHLEAF_BROWSER`, `installed by puppeteer`, … */
  readonly from: string;
  /** What its environment needs on top of ours. */
  readonly env?: Record<string, string>;
}

/**
 * The browser to print with, in this order: the one named by `BENCHLEAF_BROWSER`; one that puppeteer has
 * installed; Chrome, Chromium or Edge on the machine; the one inside `@sparticuz/chromium` (Linux x64).
 *
 * @throws {MachineError} when `BENCHLEAF_BROWSER` names no program, or when there is none at all
 */
export async function findBrowser(): Promise<BrowserChoice> {
  const named = process.env.BENCHLEAF_BROWSER;
  if (named) return { path: await program(named), from: 'BENCHLEAF_BROWSER' };
  const installed = await installedByPuppeteer();
  if (installed) return { path: installed, from: 'installed by puppeteer' };
  const onMachine = await browserOnMachine();
  if (onMachine) return { path: onMachine, from: 'on this machine' };
  if (process.platform === 'linux' && process.arch === 'x64') return bundledBrowser();
  throw new MachineError('no browser found to print with', [
    'Install Chrome, Chromium or Edge.',
    'Or run "npx puppeteer browsers install chrome-headless-shell".',
    'Or set BENCHLEAF_BROWSER to the path of a browser.',
  ]);
}

async function program(named: string): Promise<string> {
  if (await isProgram(named)) return named;
  throw new MachineError(`BENCHLEAF_BROWSER is "${named}", which is not a program that can be run`, [
    'Give the full path of a Chrome, Chromium or Edge program.',
    'Or unset BENCHLEAF_BROWSER, and a browser will be looked for.',
  ]);
}

/**
 * Where `npx puppeteer browsers install` has put the browser that belongs to this release. `puppeteer` itself is not
 * asked: it looks for its settings in the folder that the user is in, and runs them, whoever put them there.
 */
async function installedByPuppeteer(): Promise<string | undefined> {
  const { Browser, computeExecutablePath, detectBrowserPlatform } = await import('@puppeteer/browsers');
  const { PUPPETEER_REVISIONS } = await import('puppeteer-core/internal/revisions.js');
  if (!detectBrowserPlatform()) return undefined;
  const cacheDir = process.env.PUPPETEER_CACHE_DIR ?? join(homedir(), '.cache', 'puppeteer');
  for (const browser of [Browser.CHROMEHEADLESSSHELL, Browser.CHROME] as const) {
    const path = computeExecutablePath({ cacheDir, browser, buildId: PUPPETEER_REVISIONS[browser] });
    if (await isProgram(path)) return path;
  }
  return undefined;
}
