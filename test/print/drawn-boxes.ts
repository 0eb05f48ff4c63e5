import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { withPdf } from './fingerprint.js';

/** The box round one drawn path, in millimetres. */
export interface DrawnBox {
  readonly width: number;
  readonly height: number;
  /** `fill #000000`, `stroke #000000`. */
  readonly ink: string;
}

type Matrix = readonly [number, number, number, number, number, number];

/**
 * The box round every path that is filled or stroked on a page, read from the path coordinates in the PDF itself,
 * as a ruler laid on an unscaled print would find it. The width of the line is not counted.
 */
export async function drawnBoxes(path: string, pageNumber = 1): Promise<DrawnBox[]> {
  return withPdf(path, async (pdf) => {
    const { fnArray, argsArray } = await (await pdf.getPage(pageNumber)).getOperatorList();
    const boxes: DrawnBox[] = [];
    const saved: State[] = [];
    let state: State = { matrix: [1, 0, 0, 1, 0, 0], fill: '#000000', stroke: '#000000' };
    for (const [index, operator] of fnArray.entries()) {
      const args = argsArray[index];
      if (operator === OPS.save) saved.push(state);
      if (operator === OPS.restore) state = saved.pop() ?? state;
      if (operator === OPS.transform) state = { ...state, matrix: times(state.matrix, args) };
      if (operator === OPS.setFillRGBColor) state = { ...state, fill: args[0] };
      if (operator === OPS.setStrokeRGBColor) state = { ...state, stroke: args[0] };
      if (operator === OPS.constructPath) boxes.push(...boxOf(state, args));
    }
    return boxes;
  });
}

interface State {
  readonly matrix: Matrix;
  readonly fill: string;
  readonly stroke: string;
}

function times([A, B, C, D, E, F]: Matrix, [a, b, c, d, e, f]: Matrix): Matrix {
  return [A * a + C * b, B * a + D * b, A * c + C * d, B * c + D * d, A * e + C * f + E, B * e + D * f + F];
}

/** How to paint it, the path, and its least and greatest x and y. */
type PathArguments = [number, unknown, Iterable<number> | null];

function boxOf({ matrix: [a, b, c, d], fill, stroke }: State, [paint, , bounds]: PathArguments): DrawnBox[] {
  const filled = paint === OPS.fill || paint === OPS.eoFill;
  if ((!filled && paint !== OPS.stroke) || !bounds) return [];
  const [left = 0, bottom = 0, right = 0, top = 0] = bounds;
  const [x, y] = [right - left, top - bottom];
  const millimetres = (points: number): number => (points * 25.4) / 72;
  return [
    {
      width: millimetres(Math.abs(a * x) + Math.abs(c * y)),
      height: millimetres(Math.abs(b * x) + Math.abs(d * y)),
      ink: filled ? `fill ${fill}` : `stroke ${stroke}`,
    },
  ];
}
