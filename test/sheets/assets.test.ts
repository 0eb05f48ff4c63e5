import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { copyAssets } from '../../src/sheets/assets.js';
import { katexFolder } from '../../src/sheets/faces.js';

let folder: string;
let css: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'benchleaf-assets-'));
  await copyAssets(folder);
  css = await readFile(join(folder, 'benchleaf.css'), 'utf8');
});

afterAll(() => rm(folder, { recursive: true }));

describe('copyAssets(folder)', () => {
  it('leaves just what the style sheet refers to', async () => {
    const named = [...css.matchAll(/url\(([^)]+)\)/g)].map(([, name = '']) => name);
    expect([...new Set(named), 'benchleaf.css'].sort()).toEqual((await readdir(folder)).sort());
  });

  it('has KaTeX’s own rules, of the release whose code makes the formulas', async () => {
    const katex = await readFile(join(katexFolder(), 'katex.min.css'), 'utf8');
    for (const rule of katex.match(/\.katex \.[^{}]+\{[^}]*\}/g)?.slice(0, 40) ?? [])
      expect(css).toContain(rule);
    expect(css).not.toContain('.woff)');
  });

  it('is black only, and has no line that a copier would lose', () => {
    const own = css.slice(css.lastIndexOf('.katex-display'));
    const all = css.slice(css.indexOf('@page'));
    expect(new Set(all.match(/#[0-9a-f]{3,6}\b/gi))).toEqual(new Set(['#000']));
    expect(own).not.toMatch(/rgba?\(|gr[ae]y|opacity|background/);
    for (const [, width] of all.matchAll(/border[a-z-]*: ([\d.]+)mm/g))
      expect(Number(width)).toBeGreaterThanOrEqual(0.35);
  });
});
