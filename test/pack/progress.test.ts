import { execFileSync, spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { built } from './built.js';

let program: string;
beforeAll(() => {
  program = built();
  writeFileSync(
    join(program, 'run.mjs'),
    `import { showProgress } from './pack/progress.js';
     const progress = showProgress({ total: 2, ...JSON.parse(process.argv[2]) });
     progress.done('out/larkfield/handout.pdf', 12);
     progress.done('out/larkfield/card.pdf', 1);
     progress.end();
     console.log('data');`,
  );
});
afterAll(() => rmSync(program, { recursive: true }));

const run = (options: object) =>
  [process.execPath, join(program, 'run.mjs'), JSON.stringify(options)] as const;

describe('showProgress(…) in a pipe', () => {
  const both = 'out/larkfield/handout.pdf  12 pages\nout/larkfield/card.pdf  1 page\n';
  const piped = (options: object) => {
    const [node, ...words] = run(options);
    const { stdout, stderr } = spawnSync(node, words, { encoding: 'utf8' });
    return { stdout, stderr };
  };

  it('writes a line for each document', () =>
    expect(piped({})).toEqual({ stdout: `${both}data\n`, stderr: '' }));

  it('keeps standard output for data', () =>
    expect(piped({ json: true })).toEqual({ stdout: 'data\n', stderr: both }));

  it.each([{ quiet: true }, { quiet: true, json: true }])('says nothing: %j', (options) =>
    expect(piped(options)).toEqual({ stdout: 'data\n', stderr: '' }),
  );
});

const hasShell = process.platform !== 'win32';

it.runIf(hasShell)('showProgress(…) does not end the program when nobody reads its lines', () => {
  const command = run({})
    .map((word) => `'${word}'`)
    .join(' ');
  const { stderr } = spawnSync('sh', ['-c', `{ sleep 0.2; ${command}; echo "ended with $?" >&2; } | true`], {
    encoding: 'utf8',
  });
  expect(stderr).toBe('ended with 0\n');
});

const hasTerminal = spawnSync('script', ['--version']).status === 0 && process.platform === 'linux';

describe.runIf(hasTerminal)('showProgress(…) on a terminal', () => {
  /** What a real terminal is sent. */
  const sent = (options: object, env = {}): string =>
    execFileSync(
      'script',
      [
        '-qec',
        run(options)
          .map((word) => `'${word}'`)
          .join(' '),
        '/dev/null',
      ],
      {
        encoding: 'utf8',
        env: { ...process.env, TERM: 'xterm', ...env },
      },
    );

  it('draws one bar, and takes it away', () => {
    const text = sent({});
    expect(text).toContain('[########################] 2 of 2 documents, 13 pages');
    expect(text).not.toContain('handout.pdf');
    expect(text).not.toMatch(/\n.*\n/); // the bar never goes on to another line
    expect(text.split('13 pages').at(-1)).toContain('\u001B[2K'); // the line is cleared
  });

  it('leaves the cursor and the wrapping of lines as they are', () =>
    expect(sent({})).not.toMatch(/\u001B\[\?(25|7)/));

  it('is quiet when told', () => expect(sent({ quiet: true })).toBe('data\r\n'));

  it('writes lines on a terminal that cannot move its cursor', () =>
    expect(sent({}, { TERM: 'dumb' })).toContain('handout.pdf  12 pages\r\n'));
});
