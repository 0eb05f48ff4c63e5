import { z } from 'zod';
import type { Given } from '../../../calculations/cutting/given.js';
import { type CutWheel, cut } from '../../../calculations/cutting/job.js';
import { refuse } from '../../../calculations/cutting/setting.js';
import { bearing } from '../../../geometry/cutting/around.js';
import { fewerPoints } from '../../../geometry/cutting/simulate.js';
import { formatNumber } from '../../../units/format.js';
import { MM_PER_INCH } from '../../../units/length.js';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { wave } from '../../drafting/break-line.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';
import { cutGiven } from './given.js';
import { closingTeeth, type Sector } from './sector.js';

/** On paper an outline may stand off its points so far, mm. */
const FINE = 0.02;

/** The teeth about the closing one of a wheel that was cut, enlarged, with the thickness of each as measured. */
export const simulatedSector = defineFigure({
  name: 'simulated-sector',
  title: 'The closing tooth and its neighbours',
  given: z.strictObject(cutGiven),
  draw(given, style) {
    refuse(given);
    const wheel = cut(given);
    const sectors = [2, 1, 0].map((most) => closingTeeth(wheel, given, most)) as [Sector, ...Sector[]];
    const [sector] = sectors;
    const mm = (value: number): string => inWords(value, style);
    const others = sector.teeth.filter(({ closing }) => !closing).map(({ thickness }) => mm(thickness));
    const closing = wheel.measured.toothThicknesses.at(-1) ?? 0;
    const label =
      `Teeth about the closing one of a wheel of ${given.teeth} teeth, module ${plain(given.module)}: ` +
      `the closing tooth ${mm(closing)}${others.length > 0 ? `, those beside it ${[...new Set(others)].join(', ')}` : ''}.`;
    const scales = [...ENLARGEMENTS, 0.5, 0.2].filter((scale) => given.module * scale <= 16);
    const ways = sectors.flatMap((shown) => scales.map((scale) => ({ shown, scale })));
    return firstThatFits(ways, style, ({ shown, scale }) => {
      const pen = new Pen(style);
      if (!drawSector(pen, wheel, given, shown, scale)) return undefined;
      return pen.finish(label, scaleName(scale));
    });
  },
});

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The wheel's axis stands at the origin of the paper; the closing tooth at the top. False where the words have no room. */
function drawSector(pen: Pen, wheel: CutWheel, given: Given, sector: Sector, scale: number): boolean {
  const size = pen.style.labelSize;
  const pitchRadius = (given.module * given.teeth) / 2;
  const turn = sector.middle;
  const at = (radius: number, angle: number): Point => onBearing(radius * scale, -radians(angle - turn));
  const run = outlineWithin(wheel, sector, FINE / scale).map(({ angle, radius }) => at(radius, angle));
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last) return false;
  pen.stroke('outline', (trace) => trace.through(run));

  const labels = sector.teeth.map(({ thickness }) =>
    pen.style.units === 'mm' ? formatNumber(thickness, 2) : formatNumber(thickness / MM_PER_INCH, 3),
  );
  const root = wheel.measured.rootRadius;
  const wordsAt = root - (1.1 * size) / scale;
  const body = wordsAt - (1.6 * size) / scale;
  if (body < 0.3 * root) return false;
  for (const [i, tooth] of sector.teeth.entries()) {
    const next = sector.teeth[i + 1];
    const room = next
      ? Math.abs(at(wordsAt, tooth.angle).x - at(wordsAt, next.angle).x)
      : Number.POSITIVE_INFINITY;
    if (room < pen.textSize(labels[i] ?? '').width + 0.35 * size) return false;
    pen.text(labels[i] ?? '', at(wordsAt, tooth.angle), { weight: tooth.closing ? 600 : 400 });
  }
  const [left, right] = [at(body, sector.to), at(body, sector.from)];
  pen.stroke('fine', (trace) => wave(trace.moveTo(last), last, left));
  pen.stroke('fine', (trace) => wave(trace.moveTo(left), left, right));
  pen.stroke('fine', (trace) => wave(trace.moveTo(right), right, first));
  pen.stroke('centre', (trace) =>
    trace.arc(point(0, 0), pitchRadius * scale, -radians(sector.to - turn), -radians(sector.from - turn)),
  );
  const tips = Math.max(...wheel.outlines.flat().map(({ x, y }) => Math.hypot(x, y)));
  const mark = (angle: number, words: string, anchor: 'start' | 'end'): void => {
    const tip = at(tips + 1 / scale, angle);
    const tail = at(tips + (1 + 1.8 * arrowLength(pen)) / scale, angle);
    pen.line('dimension', tail, tip);
    arrowhead(pen, tip, tail);
    const aside = anchor === 'end' ? -0.3 : 0.3;
    pen.text(words, point(tail.x + aside * size, tail.y - 0.3 * size), { anchor, sit: 'above' });
  };
  mark(360, 'first cut', 'end');
  if (sector.closing)
    mark(sector.teeth.find(({ closing }) => closing)?.angle ?? sector.middle, 'closing tooth', 'start');
  const note = wrapped(
    pen,
    `Thickness of each tooth along the pitch circle as measured on the metal, ${pen.style.units === 'mm' ? 'mm' : 'inches'}.`,
    Math.max(50, pen.extent.right - pen.extent.left),
  );
  pen.text(note, point(pen.extent.left, pen.extent.bottom + 0.6 * size), { anchor: 'start', sit: 'below' });
  return true;
}

/** The longest stretch of the outline within a sector, from right to left. */
export function outlineWithin(
  wheel: CutWheel,
  { from, to, middle }: Pick<Sector, 'from' | 'to' | 'middle'>,
  within: number,
) {
  const around = fewerPoints(wheel.outlines, within)
    .reduce((a, b) => (b.length > a.length ? b : a), [])
    .map((p) => {
      const angle = bearing(p, { x: 0, y: 0 });
      // The turn that brings it nearest to the middle of the sector.
      return { angle: angle + 360 * Math.round((middle - angle) / 360), radius: Math.hypot(p.x, p.y) };
    });
  const inside = around.map(({ angle }) => angle >= from && angle <= to);
  // A leaning flank may cross the edge of the sector more than once.
  const starts = inside.flatMap((is, i) => (is && !inside.at(i - 1) ? [i] : []));
  const runs = starts.map((start) => {
    const turned = [...around.slice(start), ...around.slice(0, start)];
    const end = turned.findIndex(({ angle }) => angle < from || angle > to);
    return end < 0 ? turned : turned.slice(0, end);
  });
  return runs.reduce((a, b) => (b.length > a.length ? b : a), []);
}
