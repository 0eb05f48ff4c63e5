import { execFile } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { listCalculations, work } from '../../src/index.js';

interface Ran {
  code: number;
  out: string;
  err: string;
}

const node = (words: string[]) =>
  new Promise<Ran>((done) => {
    execFile(process.execPath, words, (error, out, err) =>
      done({ code: error ? Number(error.code) : 0, out, err }),
    );
  });
const benchleaf = (...words: string[]) => node(['dist/cli/main.js', ...words]);

// The command is tested as users run it: built, by `build-command.ts`.
describe('benchleaf', () => {
  it('work --json prints exactly what work() returns', async () => {
    const { out, code } = await benchleaf(
      'work',
      'wheel.blank',
      'teeth=60',
      'leaves=8',
      'module=0.8mm',
      '--json',
    );
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual(
      JSON.parse(JSON.stringify(work('wheel.blank', { teeth: 60, leaves: 8, module: 0.8 }))),
    );
  });

  it('list calculations --json prints exactly what listCalculations() returns', async () => {
    const { out } = await benchleaf('list', 'calculations', '--json');
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(listCalculations())));
  });

  it.each([
    [
      ['work', 'wheel.blank', 'teeth=-4', 'leaves=8', 'module=1'],
      'benchleaf: teeth: "-4" is not accepted; give a whole number from 6 to 1000\n',
    ],
    [['work', 'wheel.blank', 'teeth=60', 'teeth=61'], 'benchleaf: teeth is given twice\n'],
    [['work', 'wheel.blnk'], 'benchleaf: no calculation is called "wheel.blnk". Did you mean wheel.blank?\n'],
    [
      ['list', 'spanners'],
      'benchleaf: there is no list of "spanners". There are calculations, lessons, documents, sheets, figures.\n',
    ],
  ])('%j is a wrong command: exit 2 and one line', async (words, line) => {
    expect(await benchleaf(...words)).toEqual({ code: 2, out: '', err: line });
  });

  it('an impossible division is a result, not an error', async () => {
    const { out, code } = await benchleaf(
      'work',
      'dividing.simple',
      'divisions=97',
      'ratio=40',
      'circles=15,16',
    );
    expect(code).toBe(0);
    expect(out).toContain('possible: no');
  });

  it('takes what was not typed from a kit, and what was typed wins', async () => {
    const kit = ['--kit', 'lessons/kits/harrow-lane.yaml', '--json'];
    const from = await benchleaf('work', 'dividing.simple', 'divisions=56', ...kit);
    expect(JSON.parse(from.out).found.settings).toEqual([
      { holes: 15, circle: 21 },
      { holes: 35, circle: 49 },
    ]);
    const typed = await benchleaf('work', 'dividing.simple', 'divisions=56', 'circles=28', ...kit);
    expect(JSON.parse(typed.out).found.settings).toEqual([{ holes: 20, circle: 28 }]);
  });

  it('check passes the sample kits, and points at the fault of a wrong one with exit 1', async () => {
    expect(
      (await benchleaf('check', 'lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml')).code,
    ).toBe(0);
    const wrong = await benchleaf('check', 'biome.json');
    expect(wrong.code).toBe(1);
    expect(wrong.err).toMatch(/^biome\.json:\d+:\d+: error\[kit\/value\]/m);
    expect((await benchleaf('check', 'nosuch.yaml')).code).toBe(2);
  });

  it('--help and --version work', async () => {
    expect((await benchleaf('--help')).out).toContain('work one calculation');
    expect((await benchleaf('--version')).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
