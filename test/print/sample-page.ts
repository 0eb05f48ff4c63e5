import { copyFile, mkdtemp, realpath } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const FONTS = 'node_modules/@fontsource';

/** A fresh work folder with `serif.woff2` and `sans.woff2` in it. */
export async function workFolder(): Promise<string> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'benchleaf-print-')));
  await copyFile(
    `${FONTS}/source-serif-4/files/source-serif-4-latin-400-normal.woff2`,
    join(folder, 'serif.woff2'),
  );
  await copyFile(
    `${FONTS}/source-sans-3/files/source-sans-3-latin-400-normal.woff2`,
    join(folder, 'sans.woff2'),
  );
  return folder;
}

/** A whole page that is set in the serif of the work folder. */
export function page(body: string, css = ''): string {
  return `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><title>Wheel blanks</title>
<style>
@font-face { font-family: Text; src: url(serif.woff2); }
@font-face { font-family: Heads; src: url(sans.woff2); }
@page { size: A4; margin: 20mm; }
body { font: 11pt Text; }
h1, h2, th { font-weight: normal; }
${css}
</style></head><body>${body}</body></html>`;
}

/** Long enough to be interrupted: 60 pages with tables, which is where structure ids are. */
export function longPage(): string {
  const row = '<tr><td>60</td><td>0.8 mm</td></tr>';
  const table = `<table><tr><th>teeth</th><th>module</th></tr>${row.repeat(20)}</table>`;
  const parts = Array.from(
    { length: 60 },
    (_, n) => `<h1 style="break-before: page">Part ${n + 1}</h1>${table}`,
  );
  return page(parts.join(''));
}
