import { existsSync } from 'node:fs';
import { MachineError } from '../diagnostics/errors.js';
import { bundledBrowser } from './bundled.js';

/** A browser that can print, and where it was found. */
export interface BrowserChoice {
  readonly path: string;
  readonly from: 'BENCHLEAF_BROWSER' | 'puppeteer' | 'the machine' | '@sparticuz/chromium';
}

const ON_THE_MACHINE = [
  '/usr/bin/google-chrome',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/microsoft-edge',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/**
 * The browser to print with: BENCHLEAF_BROWSER; one that puppeteer has installed; Chrome, Chromium or Edge on the
 * machine; the one inside @sparticuz/chromium (Linux x64), unpacked into a private cache.
 *
 * @throws {MachineError} when there is none, or BENCHLEAF_BROWSER names no file
 */
export async function findBrowser(
  named: string | undefined = process.env.BENCHLEAF_BROWSER,
  onTheMachine: readonly string[] = ON_THE_MACHINE,
): Promise<BrowserChoice> {
  if (named) {
    if (existsSync(named)) return { path: named, from: 'BENCHLEAF_BROWSER' };
    throw new MachineError(`BENCHLEAF_BROWSER names ${named}, which is not there`, [
      'Correct it, or unset it',
    ]);
  }
  const installed = await installedByPuppeteer();
  if (installed) return { path: installed, from: 'puppeteer' };
  const found = onTheMachine.find((path) => existsSync(path));
  if (found) return { path: found, from: 'the machine' };
  if (process.platform === 'linux' && process.arch === 'x64')
    return { path: await bundledBrowser(), from: '@sparticuz/chromium' };
  throw new MachineError('there is no browser to print with', [
    'Install Chrome, Chromium or Edge, or set BENCHLEAF_BROWSER to the path of one',
  ]);
}

async function installedByPuppeteer(): Promise<string | undefined> {
  const { default: puppeteer } = await import('puppeteer');
  try {
    const path = await puppeteer.executablePath();
    return existsSync(path) ? path : undefined;
  } catch {
    return undefined;
  }
}
