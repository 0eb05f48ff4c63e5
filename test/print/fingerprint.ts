import { readFileSync } from 'node:fs';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

const open = (path: string) =>
  getDocument({ data: new Uint8Array(readFileSync(path)), verbosity: 0 }).promise;

/** What a printed document is, without its bytes: pages, size of the first in points, tags, outline, fonts, text. */
export async function fingerprint(path: string) {
  const pdf = await open(path);
  const info = await pdf.getMarkInfo();
  const outline = (await pdf.getOutline()) ?? [];
  const text: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const content = await (await pdf.getPage(number)).getTextContent();
    text.push(content.items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  const [, , width = 0, height = 0] = (await pdf.getPage(1)).view;
  const fonts = [
    ...new Set(
      [...readFileSync(path, 'latin1').matchAll(/\/FontName\s*\/([\w+-]+)/g)].map(([, name = '']) => name),
    ),
  ];
  return {
    pages: pdf.numPages,
    width,
    height,
    tagged: Boolean(info?.Marked),
    outline: outline.map((one) => one.title),
    fonts,
    text,
  };
}

/** Extent of the first page's first stroked path, mm, from its own coordinates and the page's transforms. */
export async function lineEnds(path: string) {
  const page = await (await open(path)).getPage(1);
  const { fnArray, argsArray } = await page.getOperatorList();
  let scale = 1;
  const scales: number[] = [];
  for (const [place, operation] of fnArray.entries()) {
    const given = argsArray[place];
    if (operation === OPS.save) scales.push(scale);
    if (operation === OPS.restore) scale = scales.pop() ?? 1;
    if (operation === OPS.transform) scale *= Math.abs(given[0]);
    if (operation === OPS.constructPath && given[0] === OPS.stroke) {
      const [left, top, right, bottom] = given[2] as number[];
      const mm = (a = 0, b = 0) => (Math.abs(b - a) * scale * 25.4) / 72;
      return { across: mm(left, right), down: mm(top, bottom) };
    }
  }
  throw new Error('no stroked path on the page');
}
