import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../src/print/browser.js';
import { hashes } from '../pack/fault-runs.js';
import { linksIn, lookAt } from '../print/fingerprint.js';
import { CLUB, FAR, NAMES, StrangersFolder, TITLE } from './stranger.js';
import { type Call, callsIn, changes, traced } from './trace.js';

const can = (...command: readonly [string, ...string[]]): boolean =>
  spawnSync(command[0], command.slice(1)).status === 0;
const linux = process.platform === 'linux';
const [strace, unshare] = [
  linux && can('strace', '-f', '-o', '/dev/null', 'true'),
  linux && can('unshare', '-rn', 'true'),
];

const sent = new StrangersFolder();
const out = join(sent.root, 'out');
const [set, alone] = [join(out, 'course'), join(sent.root, 'alone')];
const trace = join(sent.root, 'trace');
let browser: Awaited<ReturnType<typeof findBrowser>>;
let calls: Call[] = [];

beforeAll(async () => {
  browser = await findBrowser(); // unpacked now, if it has to be: that is no part of the run
  expect(sent.make(out, ...(strace ? traced(trace) : []))).toEqual({ code: 0, err: '' });
  if (strace) calls = callsIn(trace, sent.folder);
}, 120_000);
afterAll(() => sent.remove());

const within = (path: string, ...folders: readonly string[]): boolean =>
  folders.some((folder) => path === folder || path.startsWith(folder + sep));

/** The browser's shared memory: made, opened once more, and taken off the disk before anything is in it. */
const MEMORY = `${sent.temporary}${sep}.org.chromium.Chromium.`;
/** What it tells the system about its own processes: which to end first when memory runs out, who is who in a sandbox. */
const ITS_OWN = /^\/proc\/(?:self|\d+)\/(?:oom_score_adj|uid_map|gid_map|setgroups)$/;

describe.runIf(strace)('what a run asks of the system', () => {
  it('is traced: the lesson is read, the documents are moved into place', () => {
    const read = calls.filter((call) => !changes(call)).flatMap(({ paths }) => paths);
    expect(read).toContain(join(sent.folder, '02-nasty/lesson.md'));
    const moved = calls.filter(({ name }) => name.startsWith('rename')).flatMap(({ paths }) => paths);
    expect(moved).toContain(join(set, 'handout.pdf'));
    expect(calls.some(({ name, line }) => name === 'sendmsg' && line.includes('msg_name=NULL'))).toBe(true);
  });

  it('changes nothing outside the folder for documents', () => {
    const changed = calls.filter(changes).flatMap(({ paths }) => paths);
    const wrong = changed.filter(
      (path) => !within(path, out, '/dev/null') && !path.startsWith(MEMORY) && !ITS_OWN.test(path),
    );
    expect(wrong).toEqual([]);
    expect(readdirSync(sent.temporary)).toEqual([]);
  });

  it('reads what was named, what comes with the program, and what is the system’s', ({ skip }) => {
    if (!browser.from.startsWith('inside')) skip('a browser of the machine has settings of its own');
    const named = ['course.yaml', 'class.csv', '01-small/lesson.md', '02-nasty/lesson.md'];
    const ours = ['dist', 'templates', 'lessons', 'node_modules', 'package.json'].map((name) =>
      resolve(name),
    );
    const read = calls
      .filter((call) => !changes(call) && call.name !== 'execve')
      .flatMap(({ paths }) => paths);
    const wrong = read.filter(
      (path) =>
        !within(path, out, ...ours, dirname(browser.path), ...named.map((name) => join(sent.folder, name))) &&
        !path.startsWith(MEMORY) &&
        !isOfTheSystem(path),
    );
    expect(wrong).toEqual([]);
  });

  it('runs Node and the browser, and no other program', () => {
    const run = calls.filter(({ name }) => name === 'execve').flatMap(({ paths }) => paths);
    expect(new Set(run)).toEqual(new Set([process.execPath, browser.path, '/proc/self/exe']));
  });

  // The browser asks the kernel which networks there are: over a socket of netlink, and by `ioctl` on sockets for
  // datagrams, which are neither bound nor connected, and over which nothing is sent.
  it('reaches no network: nothing is connected, and nothing sent to an address', () => {
    const about = calls.filter(({ paths }) => paths.length === 0).map(({ line }) => line);
    expect(about.filter((line) => /\b(?:connect|listen|accept4?)\(/.test(line))).toEqual([]);
    expect(about.filter((line) => /\bbind\(/.test(line) && !line.includes('AF_NETLINK'))).toEqual([]);
    expect(about.filter((line) => /sa_family=AF_INET6?\b/.test(line))).toEqual([]);
    const sockets = about.filter((line) => /\bsocket\(/.test(line) && !/AF_(?:UNIX|NETLINK)/.test(line));
    expect(sockets.filter((line) => !/socket\(AF_INET6?, SOCK_DGRAM/.test(line))).toEqual([]);
  });
});

const SYSTEM = ['/usr', '/lib', '/lib64', '/sys', '/dev/null', '/dev/urandom', '/selinux', '/proc'];
/** What libraries read of the machine's settings: where they lie themselves, its time, how names would be looked up. */
const SETTINGS =
  /^\/etc\/(?:ld\.so\.\w+|localtime|timezone|host\.conf|hosts|nsswitch\.conf|resolv\.conf|gai\.conf|ssl\/.*)$/;
const isOfTheSystem = (path: string): boolean =>
  SETTINGS.test(path) || (within(path, ...SYSTEM) && !/\/(?:environ|mem|kmsg|kcore)$/.test(path));

describe('a folder that somebody has sent', () => {
  it('is made, and nothing in it is run', () => {
    expect(existsSync(sent.owned)).toBe(false);
    expect(readdirSync(set)).toEqual(
      expect.arrayContaining(['handout.pdf', 'packing-list-1-of-1.json', 'practice', 'problems']),
    );
  });

  it('prints what it asks for as words, and as no link', async () => {
    const { text, title } = await lookAt(join(set, 'handout.pdf'));
    const all = plain(text.join(' '));
    for (const words of [TITLE, CLUB, '<iframe srcdoc=', `@import '${FAR}'`, '[b](file:///etc/passwd)', FAR])
      expect(all).toContain(plain(words));
    expect(plain(title)).toContain(plain(TITLE));
    const sheets = readdirSync(join(set, 'problems')).map((name) => join(set, 'problems', name));
    expect(sheets).toHaveLength(NAMES.length);
    const named = await Promise.all(sheets.map(async (sheet) => plain((await lookAt(sheet)).text.join(' '))));
    for (const name of NAMES) expect(named.filter((sheet) => sheet.includes(plain(name)))).not.toEqual([]);
    for (const pdf of [join(set, 'handout.pdf'), ...sheets]) expect(await linksIn(pdf)).toEqual([]);
  });

  it('gives the same bytes where there is no network at all', ({ skip }) => {
    if (!unshare) skip('a process cannot be cut off from the network here');
    expect(sent.make(alone, 'unshare', '-rn')).toEqual({ code: 0, err: '' });
    expect(hashes(join(alone, 'course'))).toEqual(hashes(set));
  });
});

/** Without spaces, since lines break, and with the quotation marks of a typist. */
const plain = (text: string): string => text.replace(/\s/g, '').replace(/[‘’]/g, "'").replace(/[“”]/g, '"');
