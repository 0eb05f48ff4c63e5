import { OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { withPdf } from './fingerprint.js';

/** The box round one stroked path: its middle, from the lower left of the page, and its size; mm. */
export interface DrawnPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

type Matrix = readonly [number, number, number, number, number, number];

const times = ([A, B, C, D, E, F]: Matrix, [a, b, c, d, e, f]: Matrix): Matrix => [
  A * a + C * b,
  B * a + D * b,
  A * c + C * d,
  B * c + D * d,
  A * e + C * f + E,
  B * e + D * f + F,
];

const MM = 25.4 / 72;

/** Where every stroked path of each page lies, as a ruler laid on an unscaled print would find it. */
export async function drawnPlaces(path: string): Promise<DrawnPlace[][]> {
  return withPdf(path, (pdf) =>
    Promise.all(Array.from({ length: pdf.numPages }, async (_, at) => placesOn(await pdf.getPage(at + 1)))),
  );
}

async function placesOn(page: PDFPageProxy): Promise<DrawnPlace[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const found: DrawnPlace[] = [];
  const saved: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  for (const [index, operator] of fnArray.entries()) {
    const args = argsArray[index];
    if (operator === OPS.save) saved.push(matrix);
    if (operator === OPS.restore) matrix = saved.pop() ?? matrix;
    if (operator === OPS.transform) matrix = times(matrix, args);
    if (operator !== OPS.constructPath || args[0] !== OPS.stroke || !args[2]) continue;
    const [left = 0, bottom = 0, right = 0, top = 0] = args[2] as Iterable<number> & number[];
    const [a, b, c, d, e, f] = matrix;
    const [x, y, across, up] = [(left + right) / 2, (bottom + top) / 2, right - left, top - bottom];
    found.push({
      x: MM * (a * x + c * y + e),
      y: MM * (b * x + d * y + f),
      width: MM * (Math.abs(a * across) + Math.abs(c * up)),
      height: MM * (Math.abs(b * across) + Math.abs(d * up)),
    });
  }
  return found;
}
