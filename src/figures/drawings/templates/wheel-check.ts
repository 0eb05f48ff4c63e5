import { z } from 'zod';
import { turnedPath } from '../../../geometry/curves/path.js';
import { wheelTooth } from '../../../geometry/wheels/wheel-outline.js';
import { traceOutline } from '../../drafting/outline.js';
import { onBearing, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import type { StrokeKind } from '../../drafting/strokes.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length, toothModule, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { centreMark, graduations, numbersRound, pointer, stepFor } from './marks.js';

const CENTRE = point(0, 0);
/** A degree takes at least so much of the ring, mm. */
const DEGREE = 0.6;
const REACH = [1.8, 2.8, 4] as const;

/** A wheel at true scale with its three circles, its teeth counted round it, and a ring of degrees. */
export const wheelCheck = defineFigure({
  name: 'wheel-check',
  title: 'A ring to check a wheel by',
  given: z
    .strictObject({
      teeth: count(6, 400),
      leaves: count(5, 100),
      module: toothModule(),
      outsideDiameter: length(0.2, 2500),
      rootDiameter: length(0.1, 2500),
      root: word('flat', 'round').default('flat'),
      hole: length(0.1, 300).optional(),
    })
    .refine((g) => g.leaves <= g.teeth, {
      path: ['leaves'],
      message: 'at most as many as the wheel has teeth',
    })
    .refine((g) => g.outsideDiameter > g.teeth * g.module, {
      path: ['outsideDiameter'],
      message: 'more than the pitch diameter',
    })
    .refine((g) => g.rootDiameter < g.teeth * g.module, {
      path: ['rootDiameter'],
      message: 'less than the pitch diameter',
    })
    .refine((g) => (g.hole ?? 0) < g.rootDiameter, { path: ['hole'], message: 'less than the root circle' }),
  draw(given, style) {
    const { teeth, leaves, module, outsideDiameter, rootDiameter, root, hole } = given;
    const pitchDiameter = teeth * module;
    const tooth = wheelTooth({
      teeth,
      leaves,
      module,
      addendum: (outsideDiameter - pitchDiameter) / 2 / module,
      dedendum: (pitchDiameter - rootDiameter) / 2 / module,
      root,
    });
    const pen = new Pen(style);
    const upright = turnedPath(tooth, Math.PI / 2);
    pen.strokeRound(edgeFor(module), CENTRE, teeth, (trace) => traceOutline(trace, upright, CENTRE, 1));
    pen.circle('fine', CENTRE, outsideDiameter / 2);
    pen.circle('centre', CENTRE, pitchDiameter / 2);
    pen.circle('dimension', CENTRE, rootDiameter / 2);
    if (hole !== undefined) pen.circle('outline', CENTRE, hole / 2);
    drawRings(pen, teeth, outsideDiameter / 2);
    const past = outsideDiameter / 2;
    pen.line('centre', point(-past, 0), point(past, 0));
    pen.line('centre', point(0, -past), point(0, past));
    centreMark(pen, CENTRE, Math.min(2, rootDiameter / 8));
    const mm = (value: number): string => inWords(value, style);
    const rows: readonly Sample[] = [
      { kind: 'fine', words: `tips, the blank Ø ${mm(outsideDiameter)}` },
      { kind: 'centre', words: `pitch circle Ø ${mm(pitchDiameter)}` },
      { kind: 'dimension', words: `root Ø ${mm(rootDiameter)}` },
    ];
    samples(pen, rows);
    const label =
      `A wheel of ${teeth} teeth, module ${plain(module)}, at true scale, to lay the cut wheel on: ` +
      `tips ${mm(outsideDiameter)}, pitch circle ${mm(pitchDiameter)}, root ${mm(rootDiameter)}; ` +
      'the teeth counted round it, and a ring of degrees.';
    return fitting(style, pen.finish(label, 'true scale'));
  },
});

/** Small teeth are drawn fine, or their lines would fill the spaces. */
const edgeFor = (module: number): StrokeKind => (module < 1 ? 'dimension' : module < 2 ? 'fine' : 'outline');

/** Teeth counted from the top, outside them a ring of degrees. */
function drawRings(pen: Pen, teeth: number, tips: number): void {
  const size = pen.style.labelSize;
  const from = tips + 1.6;
  const every = stepFor(pen, {
    radius: from + size,
    parts: teeth,
    widest: String(teeth),
    steps: [1, 5, 10, 20, 50, 100],
  });
  // The last stands at the top, where the first would be; one that would crowd it is left out.
  const counted = new Map([[0, String(teeth)]]);
  for (let tooth = every; tooth <= teeth - every; tooth += every)
    counted.set((2 * Math.PI * tooth) / teeth, String(tooth));
  for (let tooth = 0; tooth < teeth; tooth++) {
    const bearing = (2 * Math.PI * tooth) / teeth;
    const long = counted.has(bearing);
    pen.line(
      long ? 'fine' : 'dimension',
      onBearing(tips + 0.8, bearing),
      onBearing(from + (long ? 0.6 : 0), bearing),
    );
  }
  numbersRound(pen, { radius: from + 0.6, side: 'outside', labels: counted });
  const widest = pen.textSize(String(teeth));
  const band = Math.hypot(widest.width, widest.height) + 0.9 * size;
  const inside = Math.max(from + band, (360 * DEGREE) / 2 / Math.PI);
  pen.circle('fine', CENTRE, inside);
  graduations(pen, { centre: CENTRE, radius: inside, parts: 360, reach: REACH });
  const outside = inside + REACH[2];
  const step = stepFor(pen, { radius: outside + size, parts: 360, widest: '350', steps: [10, 30, 90] });
  const degrees = Array.from({ length: 360 / step }, (_, at): [number, string] => [
    (2 * Math.PI * at * step) / 360,
    String(at * step),
  ]);
  numbersRound(pen, { radius: outside, side: 'outside', labels: new Map(degrees) });
  pointer(pen, point(0, -outside - pen.textSize('0').height - 0.6 * size));
}

interface Sample {
  readonly kind: StrokeKind;
  readonly words: string;
}

/** A list under the drawing of what each kind of line is. */
function samples(pen: Pen, rows: readonly Sample[]): void {
  const size = pen.style.labelSize;
  const stroke = Math.max(12, 3 * size);
  const width = stroke + size + Math.max(...rows.map(({ words }) => pen.textSize(words).width));
  const top = pen.extent.bottom + size;
  for (const [at, { kind, words }] of rows.entries()) {
    const y = top + (at + 0.5) * 1.4 * size;
    pen.line(kind, point(-width / 2, y), point(-width / 2 + stroke, y));
    pen.text(words, point(-width / 2 + stroke + size, y), { anchor: 'start' });
  }
}
