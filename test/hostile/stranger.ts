import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { lesson, SMUGGLED } from './nasty.js';
import { asking } from './ways.js';

/** Nobody answers there; a packet to it would go out. */
export const FAR = 'http://192.0.2.77/a';

const LINKS = `[a](javascript:alert(1)) [b](file:///etc/passwd) ![c](${FAR}) <${FAR}> ${FAR} [d]

[d]: file:///etc/passwd

{{problems}}
`;
const SHORT = SMUGGLED.filter((text) => text.length <= 80);
export const [CLUB = '', TITLE = ''] = SHORT;
/** What a class list says. */
export const NAMES = [...SHORT, '../../etc/passwd', '=HYPERLINK("file:///etc/passwd")'];

/**
 * A folder that somebody has sent, in which the user stands and works: a course, a class, and lessons that ask for
 * everything in words. Beside them lie files that other programs would take for their settings and run.
 */
export class StrangersFolder {
  readonly root = realpathSync(mkdtempSync(join(tmpdir(), 'benchleaf-sent-')));
  readonly folder = join(this.root, 'sent');
  /** Appears when anything that was sent is run. */
  readonly owned = join(this.root, 'owned');
  readonly temporary = join(this.root, 'tmp');

  constructor() {
    for (const name of ['01-small', '02-nasty', '.config', 'node_modules/tar-fs'])
      mkdirSync(join(this.folder, name), { recursive: true });
    mkdirSync(this.temporary);
    const body = [...SMUGGLED, ...Object.values(asking).map((way) => way(FAR))].join('\n\n');
    const title = `title: ${JSON.stringify(TITLE)}\n`;
    this.put('01-small/lesson.md', lesson());
    this.put('02-nasty/lesson.md', lesson({ title, body: `${body}\n\n${LINKS}` }));
    this.put(
      'course.yaml',
      `course: ${JSON.stringify(TITLE)}\nclub: ${JSON.stringify(CLUB)}\nkit: ${resolve('lessons/kits/harrow-lane.yaml')}\n` +
        'variant: "7KQ-2M4-X"\nlessons: [01-small, 02-nasty]\n',
    );
    this.put('class.csv', ['name', ...NAMES.map((name) => `"${name.replaceAll('"', '""')}"`), ''].join('\n'));
    this.#plantSettings();
  }

  /** Settings that name a program, or are one: of what drives the browser, of Node, of npm. */
  #plantSettings(): void {
    const evil = join(this.folder, 'evil.sh');
    this.put('evil.sh', `#!/bin/sh\ntouch ${this.owned}\n`);
    chmodSync(evil, 0o755);
    const settings = JSON.stringify({ executablePath: evil });
    const program = `require('node:fs').writeFileSync(${JSON.stringify(this.owned)}, ''); module.exports = ${settings};\n`;
    this.put('package.json', `{ "type": "commonjs", "puppeteer": ${settings} }\n`);
    for (const name of ['.puppeteerrc', '.puppeteerrc.json', '.config/puppeteerrc']) this.put(name, settings);
    for (const name of ['.puppeteerrc.cjs', 'puppeteer.config.cjs', 'puppeteer.config.js', '.pnp.cjs'])
      this.put(name, program);
    this.put('node_modules/tar-fs/index.js', program);
    this.put(
      '.npmrc',
      `script-shell=${evil}\nnode-options=--require ${join(this.folder, '.puppeteerrc.cjs')}\n`,
    );
  }

  put(name: string, text: string): void {
    writeFileSync(join(this.folder, name), text);
  }

  /** Makes the whole course for the class, from within the folder, with a program before it. */
  make(out: string, ...before: readonly string[]): { readonly code: number | null; readonly err: string } {
    const line = [
      ...before,
      process.execPath,
      resolve('dist/cli/main.js'),
      ...['make', 'course.yaml', '--learners', 'class.csv', '--quiet', '--out', out],
      ...['--only', 'handout,problems,practice'],
    ];
    const [first = '', ...rest] = line;
    const { status, stderr } = spawnSync(first, rest, {
      cwd: this.folder,
      encoding: 'utf8',
      env: {
        PATH: process.env.PATH,
        HOME: homedir(),
        ...(process.env.XDG_CACHE_HOME ? { XDG_CACHE_HOME: process.env.XDG_CACHE_HOME } : {}),
        TMPDIR: this.temporary,
        SOURCE_DATE_EPOCH: '1700000000',
      },
    });
    return { code: status, err: stderr };
  }

  remove(): void {
    rmSync(this.root, { recursive: true, force: true });
  }
}
