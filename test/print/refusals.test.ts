import { mkdir, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { MachineError } from '../../src/diagnostics/errors.js';
import { Printer } from '../../src/print/printer.js';
import { page, workFolder } from './sample-page.js';

let work: string;
let printer: Printer;

beforeAll(async () => {
  work = await workFolder();
  await writeFile(join(work, 'broken.woff2'), 'this is no font');
  await writeFile(join(work, 'broken.png'), 'this is no picture');
  await symlink('/etc/passwd', join(work, 'innocent.css'));
  printer = await Printer.open({ workFolder: work });
});

afterEach(async () => {
  const left = (await readdir(work)).filter((name) => /\.pdf|\.html|\.part/.test(name));
  expect(left).toEqual([]);
});

afterAll(async () => {
  await printer.close();
  await rm(work, { recursive: true });
});

const refusal = (html: string): Promise<unknown> => printer.print({ html, to: join(work, 'refused.pdf') });

describe('print() refuses a page', () => {
  it.each([
    'file:///etc/passwd',
    '/etc/passwd',
    '../../etc/passwd',
    '%2e%2e/%2e%2e/etc/passwd',
    'innocent.css',
  ])('that reads outside the work folder: %s', async (href) => {
    const outside = refusal(page(`<link rel="stylesheet" href="${href}">`));
    await expect(outside).rejects.toThrow(/refused: it is outside the work folder/);
  });

  it('that reads a neighbour whose name begins like the work folder', async () => {
    await mkdir(`${work}-more`);
    await writeFile(join(`${work}-more`, 'a.css'), '');
    const outside = refusal(page(`<link rel="stylesheet" href="${work}-more/a.css">`));
    await expect(outside).rejects.toThrow(/outside the work folder/);
    await rm(`${work}-more`, { recursive: true });
  });

  it.each([
    [
      'a missing font',
      '<style>@font-face { font-family: N; src: url(n.woff2) } p { font-family: N }</style><p>a</p>',
      /n\.woff2 does not exist/,
    ],
    [
      'a font that is none',
      '<style>@font-face { font-family: N; src: url(broken.woff2) } p { font-family: N }</style><p>a</p>',
      /the font N cannot be used/,
    ],
    ['a missing style sheet', '<link rel="stylesheet" href="n.css">', /n\.css does not exist/],
    ['a missing picture', '<img src="n.png" alt="a wheel">', /n\.png does not exist/],
    [
      'a picture that is none',
      '<img src="broken.png" alt="a wheel">',
      /the picture "a wheel" cannot be drawn/,
    ],
    ['a drawing with a number that is none', '<svg><path d="M0 0 L NaN 1"/></svg>', /NaN/],
  ])('with %s', async (_, body, message) => {
    await expect(refusal(page(body))).rejects.toThrow(message);
  });

  it('without title or language', async () => {
    await expect(refusal('<!doctype html><p>a</p>')).rejects.toThrow(/it has no title; it has no language/);
  });

  it('and names every fault', async () => {
    await expect(refusal(page('<img src="a.png"><img src="b.png">'))).rejects.toMatchObject({
      name: 'PrintError',
      problems: ['a.png does not exist', 'b.png does not exist'],
    });
  });
});

describe('print() says where it cannot write', () => {
  it('names the path and the reason, and leaves nothing', async () => {
    const to = join(work, 'none', 'a.pdf');
    const failure = printer.print({ html: page('a'), to });
    await expect(failure).rejects.toThrow(MachineError);
    await expect(failure).rejects.toThrow(`cannot write ${to}: its folder does not exist`);
  });

  it('open({ workFolder }) refuses a folder that is not there', async () => {
    await expect(Printer.open({ workFolder: '/none' })).rejects.toThrow(/cannot use the work folder \/none/);
  });
});
