import { readFile, realpath, stat } from 'node:fs/promises';
import { homedir } from 'node:os';
import { delimiter, isAbsolute, join } from 'node:path';
import { isProgram, majorIn, versionOf } from './program.js';

/** Running heads are set in page margin boxes, which came with Chromium 131. */
export const OLDEST_MAJOR = 131;

/** Names on the PATH of a Linux machine, the likeliest first. */
const LINUX = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'chromium-headless-shell',
  'microsoft-edge-stable',
  'microsoft-edge',
];

const MAC = [
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Chromium.app/Contents/MacOS/Chromium',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const WINDOWS = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Chromium\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

/** Chrome, Chromium or Edge as installed on this machine, new enough to print with; the first that is. */
export async function browserOnMachine(): Promise<string | undefined> {
  for (const path of places()) {
    if ((await isProgram(path)) && (await isFit(path))) return path;
  }
  return undefined;
}

function places(): string[] {
  const { env, platform } = process;
  if (platform === 'darwin') {
    return ['/Applications', join(homedir(), 'Applications')].flatMap((at) =>
      MAC.map((app) => join(at, app)),
    );
  }
  if (platform === 'win32') {
    const roots = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA].filter((root) => !!root);
    return roots.flatMap((root) => WINDOWS.map((app) => `${root}\\${app}`));
  }
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => isAbsolute(folder));
  return LINUX.flatMap((name) => folders.map((folder) => join(folder, name)));
}

async function isFit(path: string): Promise<boolean> {
  if (process.platform === 'win32') return true; // there "--version" opens a window
  return !(await isSnap(path)) && majorIn(await versionOf(path)) >= OLDEST_MAJOR;
}

/** A snap sees neither the temporary folder nor hidden ones, so it could not read the pages. */
async function isSnap(path: string): Promise<boolean> {
  const real = await realpath(path);
  if (real.includes('/snap')) return true;
  const isScript = (await stat(real)).size < 10_000;
  return isScript && (await readFile(real, 'utf8')).includes('/snap/');
}
