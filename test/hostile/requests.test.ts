import { existsSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { PrintError } from '../../src/print/print-error.js';
import { Printer } from '../../src/print/printer.js';
import { linksIn, lookAt } from '../print/fingerprint.js';
import { page, workFolder } from '../print/sample-page.js';
import { asking, idle } from './ways.js';

const SECRET = 'Nobody may read this';
/** Every connection, whatever is said over it: a web server would see only those that ask politely. */
const sockets: Socket[] = [];
const server = createServer((socket) => {
  sockets.push(socket);
  socket.destroy();
});
const folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchleaf-secret-')));
let work: string;
let printer: Printer;
let host: string;

beforeAll(async () => {
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  host = `127.0.0.1:${(server.address() as AddressInfo).port}`;
  writeFileSync(join(folder, 'secret.html'), `<p>${SECRET}</p>`);
  work = await workFolder();
  printer = await Printer.open({ workFolder: work });
});
afterEach(() => expect(sockets).toHaveLength(0));
afterAll(async () => {
  await printer.close();
  server.close();
  for (const path of [folder, work]) rmSync(path, { recursive: true });
});

/** Why it was refused; undefined when it was printed, without anything that is not its own. */
async function refusal(html: string): Promise<string | undefined> {
  const to = join(work, 'nasty.pdf');
  rmSync(to, { force: true });
  try {
    await printer.print({ html, to });
  } catch (error) {
    expect(error).toBeInstanceOf(PrintError);
    expect(existsSync(to)).toBe(false);
    return (error as Error).message;
  }
  expect(JSON.stringify(await lookAt(to))).not.toMatch(/Nobody may|root:/);
  return undefined;
}

const ways = Object.entries(asking);
const NETWORK =
  /was refused: a page may fetch nothing from the network|Unsafe attempt to load URL|could not be read|goes elsewhere by itself/;
const OUTSIDE =
  /was refused: it is outside the work folder|Unsafe attempt to load URL|Not allowed to load local|could not be read|goes elsewhere by itself/;

describe('a page that asks for something is refused, and no connection is made', () => {
  it.each(ways)('%s over the network', async (_, way) => {
    expect(await refusal(page(way(`http://${host}/a`)))).toMatch(NETWORK);
  });

  it.each(ways)('%s outside the work folder', async (_, way) => {
    expect(await refusal(page(way(`file://${folder}/secret.html`)))).toMatch(OUTSIDE);
  });

  it.each(['https', 'ftp', 'ws', 'view-source:http', 'blob:http', 'filesystem:http'])(
    'all of them by %s:, refused or not asked for',
    async (scheme) => {
      await refusal(page(ways.map(([, way]) => way(`${scheme}://${host}/a`)).join('')));
    },
  );

  it.each([
    'https://example.org/a',
    'chrome://version',
    'chrome-extension://a/b',
    'devtools://devtools/bundled/inspector.html',
    'about:version',
    'javascript:fetch(1)',
    'data:text/html,a',
    '//127.0.0.1/a',
    'file://127.0.0.1/etc/passwd',
    'file://localhost/etc/passwd',
    'file:etc/passwd',
    'file:///proc/self/environ',
    'file:///dev/zero',
    'view-source:file:///etc/passwd',
  ])('all of them from %s, refused or not asked for', async (at) => {
    await refusal(page(ways.map(([, way]) => way(at)).join('')));
  });

  it('nothing is said of whether a file is there', async () => {
    const told = async (name: string) => (await refusal(page(`<img src="${name}">`)))?.replaceAll(name, '');
    const there = await told(`file://${folder}/secret.html`);
    expect(there).toMatch(OUTSIDE);
    expect(await told(`file://${folder}/none.html`)).toBe(there);
  });

  it('a machine that a file is said to be on is not asked', async () => {
    expect(await refusal(page('<img src="file://server/share/a.png">'))).toMatch(NETWORK);
  });
});

describe('a page that would ask when something is run, clicked or waited for is printed without', () => {
  it.each(Object.entries(idle))('%s', async (_, way) => {
    const at = [`http://${host}/a`, `file://${folder}/secret.html`];
    expect(await refusal(page(at.map(way).join('')))).toBeUndefined();
  });
});

it('a page that goes elsewhere later is refused, and the next one does not suffer for it', async () => {
  const later = `<meta HTTP-EQUIV="Refresh" content="1;url=http://${host}/a">`;
  expect(await refusal(page(later))).toMatch(/it goes elsewhere by itself/);
  await sleep(1200);
  expect(await refusal(page('<p>The next</p>'))).toBeUndefined();
});

it('a link in a document is found where there is one', async () => {
  const to = join(work, 'links.pdf');
  await printer.print({ html: page('<a href="file:///etc/passwd">a</a> <a href="#b">b</a><p id="b">'), to });
  expect(await linksIn(to)).toEqual(['file:///etc/passwd']);
});
