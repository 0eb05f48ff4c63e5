import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { templates } from '../../src/reference/templates/index.js';
import { benchleaf } from '../cli/benchleaf.js';
import { lookAt } from '../print/fingerprint.js';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-templates-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A course of one lesson with these jobs. */
function course(name: string, jobs: string): string {
  const file = join(folder, `${name}.yaml`);
  const kit = resolve('lessons/kits/harrow-lane.yaml');
  writeFileSync(file, `course: Try\nclub: Try\nkit: ${kit}\nlessons: [14-crossing-out]\njobs:\n${jobs}`);
  return file;
}

describe('templates', () => {
  it('are all made for a course, each with its outlines, and only when they are asked for', async () => {
    const out = join(folder, 'all');
    const { code, err } = await benchleaf('make', '--only', 'templates', '--out', out, '--quiet');
    expect([code, err]).toEqual([0, '']);
    expect(readdirSync(join(out, 'larkfield', 'templates')).sort()).toEqual([
      'crossing.pdf',
      'crossing.svg',
      'cutter-form.pdf',
      'cutter-form.svg',
      'degree-disc-01-the-disc.svg',
      'degree-disc-02-the-vernier.svg',
      'degree-disc.pdf',
      'division-plate-01-large-dividing-head-plate-1.svg',
      'division-plate-02-large-dividing-head-plate-2.svg',
      'division-plate-03-large-dividing-head-plate-3.svg',
      'division-plate-04-lathe-spindle-plate.svg',
      'division-plate.pdf',
      'printer-test.pdf',
      'printer-test.svg',
      'wheel-check.pdf',
      'wheel-check.svg',
    ]);
    const { text } = await lookAt(join(out, 'larkfield', 'templates', 'crossing.pdf'));
    expect(text[0]).toContain('Harrow Lane Model Engineers');
  });

  it('by name are of the sample course’s wheel', async () => {
    const out = join(folder, 'named');
    const { code } = await benchleaf(
      'make',
      'template:crossing',
      'template:printer-test',
      '--out',
      out,
      '--quiet',
    );
    expect(code).toBe(0);
    const made = join(out, 'templates', 'templates');
    expect(readdirSync(made).sort()).toEqual([
      'crossing.pdf',
      'crossing.svg',
      'printer-test.pdf',
      'printer-test.svg',
    ]);
    expect(readFileSync(join(made, 'crossing.svg'), 'utf8')).toContain('<title>Class wheel</title>');
  });

  it('are told nearly right by one who types them nearly right', async () => {
    expect(await benchleaf('make', 'template:crosing')).toEqual({
      code: 2,
      out: '',
      err: 'benchleaf: there is no template "template:crosing". Did you mean template:crossing?\n',
    });
  });

  it('are listed with what they need', async () => {
    const { out } = await benchleaf('list', 'sheets');
    for (const { name, title } of templates) expect(out).toContain(`template:${name}: ${title}; `);
    expect(out).toMatch(/^template:crossing: .*\n {4}needs a course with a wheel/m);
    expect(out).toMatch(/^template:degree-disc: .*\n {4}needs no equipment/m);
  });

  it('that a kit has nothing for are left out, or refused by name', async () => {
    const bare = join(folder, 'bare.yaml');
    writeFileSync(bare, 'kit: Bare bench\nunits: mm\n');
    const out = join(folder, 'bare');
    const jobs = '  - { name: Wheel, teeth: 60, module: 0.8, blankThickness: 2 }\n';
    const words = ['--only', 'templates', '--kit', bare, '--out', out, '--quiet'];
    expect(await benchleaf('make', course('try', jobs), ...words)).toEqual({ code: 0, out: '', err: '' });
    const made = readdirSync(join(out, 'try', 'templates'));
    expect(made).toContain('crossing.pdf');
    expect(made).not.toContain('division-plate.pdf');
    const { code, err } = await benchleaf('make', 'template:division-plate', '--kit', bare);
    expect(code).toBe(2);
    expect(err).toMatch(/needs a dividing head or a plate for the spindle, and there is none/);
  });

  it('of a course with no jobs are those that need none', async () => {
    const none = course('none', '').replace(/$/, '');
    writeFileSync(none, readFileSync(none, 'utf8').replace('jobs:\n', ''));
    const out = join(folder, 'none');
    const { code } = await benchleaf('make', none, '--only', 'templates', '--out', out, '--quiet');
    expect(code).toBe(0);
    const pdfs = readdirSync(join(out, 'none', 'templates')).filter((name) => name.endsWith('.pdf'));
    expect(pdfs.sort()).toEqual(['degree-disc.pdf', 'division-plate.pdf', 'printer-test.pdf']);
  });

  it.each([
    [
      '  - { name: Shut, teeth: 60, module: 0.8, blankThickness: 2, crossing: { hubDiameter: 3.6 } }\n',
      /course\/job/,
    ],
    [
      '  - { name: Odd, teeth: 60, module: 0.8, blankThickness: 2, crossing: { arms: 2 } }\n',
      /a whole number from 3 to 12/,
    ],
    ['  - { name: Odd, teeth: 60, module: 0.8, blankThickness: 2, crossing: { spokes: 5 } }\n', /spokes/],
  ])('are refused for a crossing that cannot be, with its course: %s', async (jobs, message) => {
    const { code, err } = await benchleaf(
      'make',
      course('wrong', jobs),
      '--only',
      'templates',
      '--out',
      folder,
    );
    expect(code).toBe(1);
    expect(err).toMatch(message);
    expect(err).toContain('wrong.yaml');
  });
});

describe('a printer that has been measured', () => {
  it('is told of, and has a copy of its own: the sheet itself stays as it was', async () => {
    const words = ['make', 'template:crossing', '--json', '--quiet'];
    const [plain, told] = [join(folder, 'plain'), join(folder, 'told')];
    await benchleaf(...words, '--out', plain);
    const { code, out } = await benchleaf(...words, '--out', told, '--printer-scale', 'y=1.001, X=0.998');
    expect(code).toBe(0);
    const made = JSON.parse(out) as { documents: { file: string; reports?: string[] }[] };
    expect(made.documents.map(({ file }) => file.split(/[/\\]/).at(-1))).toEqual([
      'crossing.pdf',
      'crossing-for-one-printer.pdf',
      'crossing.svg',
    ]);
    expect(made.documents[0]?.reports?.map((one) => one.replaceAll('\u00A0', ' '))).toEqual([
      'On a printer that makes 0.998 of 1 across and 1.001 of 1 down: the diameter over the tips should be 50.21 mm, ' +
        'and comes out 50.11 mm across and 50.26 mm down. This sheet is not altered for it.',
    ]);
    const svg = (at: string): string =>
      readFileSync(join(at, 'templates', 'templates', 'crossing.svg'), 'utf8');
    expect(svg(told)).toBe(svg(plain));
  });

  it('that prints true has no copy', async () => {
    const out = join(folder, 'true');
    await benchleaf('make', 'template:printer-test', '--printer-scale', 'X=1,Y=1', '--out', out, '--quiet');
    expect(readdirSync(join(out, 'templates', 'templates')).sort()).toEqual([
      'printer-test.pdf',
      'printer-test.svg',
    ]);
  });

  it.each(['0.998', 'X=0.998', 'X=0.5,Y=1', 'X=1,Y=1.2', 'X=1,Y=one', 'X=1,X=1', 'X=1,Y=1,Z=1', 'X=-1,Y=1'])(
    'is refused as %s, in a line that says how it is written',
    async (scale) => {
      const { code, err } = await benchleaf('make', 'template:crossing', '--printer-scale', scale);
      expect(code).toBe(2);
      expect(err).toMatch(/Write it as X=0\.998,Y=1\.001.*each from 0\.9 to 1\.1/);
    },
  );

  it('is for templates only', async () => {
    const { code, err } = await benchleaf('make', '--printer-scale', 'X=0.99,Y=1', '--out', folder);
    expect([code, err]).toEqual([
      2,
      'benchleaf: --printer-scale is for templates. Add --only templates, or name one.\n',
    ]);
  });
});
