import { z } from 'zod';
import { InputError } from '../../../diagnostics/errors.js';
import { counted } from '../../../units/words.js';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { spread } from '../../drafting/spread.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { count, numbers } from '../../given.js';
import { Pen } from '../../pen.js';

/** A wheel of the arrangement: an idler has no count of its own that matters. */
interface Wheel {
  readonly name: string;
  readonly teeth?: number;
  /** 1 clockwise, -1 against it. */
  readonly turn: number;
}

/** An idler is drawn as large as a wheel of so many teeth. */
const IDLER = 40;

const gears = (what: string) => numbers(z.number().int().min(10).max(200), 2, what);

/** The gears from spindle to plate, in mesh, with their counts and the way each turns. */
export const differentialGears = defineFigure({
  name: 'differential-gears',
  title: 'Gears for differential indexing',
  given: z.strictObject({
    spindleGears: gears('teeth of the wheel on the spindle, and of the driver on the stud, each 10 to 200'),
    plateGears: gears('teeth of the wheel on the plate, and of the driven one on the stud, each 10 to 200'),
    idlers: count(0, 2),
  }),
  draw({ spindleGears, plateGears, idlers }, style) {
    const [spindle = 0, stud] = spindleGears;
    const [plate = 0, driven] = plateGears;
    if ((stud === undefined) !== (driven === undefined))
      throw new InputError('plateGears', plateGears, 'as many wheels as spindleGears');
    const [least, most] = stud === undefined ? [1, 2] : [0, 1];
    if (idlers < least || idlers > most)
      throw new InputError('idlers', idlers, `${least} or ${most} with ${2 * spindleGears.length} wheels`);

    const between = Array.from({ length: idlers }, (): Omit<Wheel, 'turn'> => ({ name: 'idler' }));
    const rows =
      stud === undefined || driven === undefined
        ? [[{ name: 'spindle', teeth: spindle }, ...between, { name: 'plate', teeth: plate }]]
        : [
            [{ name: 'spindle', teeth: spindle }, ...between, { name: 'stud', teeth: driven }],
            [
              { name: 'plate', teeth: plate },
              { name: 'stud', teeth: stud },
            ],
          ];
    const pen = new Pen(style);
    drawRows(pen, turning(rows));

    const ratio =
      spindleGears.length === 1 ? `${spindle} ÷ ${plate}` : `${spindle} × ${stud} ÷ (${plate} × ${driven})`;
    const way = idlers === least ? 'the same way as' : 'the opposite way to';
    const caption = `The plate turns ${ratio.replaceAll('÷', '/')} times for one turn of the spindle, ${way} the crank`;
    const size = style.labelSize;
    const { left, right, bottom } = pen.extent;
    const words = wrapped(pen, caption, style.maxWidth - 2, { weight: 600 });
    pen.text(words, point((left + right) / 2, bottom + 0.8 * size), { sit: 'below', weight: 600 });
    const label = `Gears from spindle to plate: ${spindle} on the spindle, ${stud === undefined ? '' : `${driven} and ${stud} on the stud, `}${plate} on the plate, ${idlers === 0 ? 'no idler' : counted(idlers, 'idler')}. ${caption}.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});

/** Each wheel turns against the one before it; what stands on the stud turns as one. */
function turning(rows: readonly (readonly Omit<Wheel, 'turn'>[])[]): Wheel[][] {
  const [first = [], second = []] = rows;
  const above = first.map((wheel, i) => ({ ...wheel, turn: i % 2 === 0 ? 1 : -1 }));
  const stud = above.at(-1)?.turn ?? 1;
  const below = second.map((wheel, i) => ({ ...wheel, turn: i === second.length - 1 ? stud : -stud }));
  return below.length > 0 ? [above, below] : [above];
}

/** Whether a wheel's count goes inside it; where it does not, it stands by the name. */
const fitsInside = (pen: Pen, teeth: number, radius: number): boolean => {
  const { width, height } = pen.textSize(String(teeth), { weight: 600 });
  return Math.hypot(width, height) / 2 + 0.6 <= radius;
};

const radiusOf = ({ teeth = IDLER }: Wheel): number => teeth / 2;

/** Rows of wheels in mesh, the last of each row under one another, for they share the stud. */
function drawRows(pen: Pen, rows: readonly (readonly Wheel[])[]): void {
  const size = pen.style.labelSize;
  const widths = rows.map((row) => row.reduce((sum, wheel) => sum + 2 * radiusOf(wheel), 0));
  const lasts = rows.map((row) => radiusOf(row.at(-1) as Wheel));
  // Widths to the left and to the right of the stud, over all rows.
  const left = Math.max(...widths.map((width, i) => width - (lasts[i] ?? 0)));
  const right = Math.max(...lasts);
  const smallest = Math.min(...rows.flat().map(radiusOf));
  // Names may stand out beyond the outermost wheels.
  const widest = pen.textSize('spindle, 100').width;
  const scale = Math.min(
    (pen.style.maxWidth - 4 - widest) / (left + right),
    Math.max(9, 1.1 * size) / smallest,
  );
  let top = 0;
  let stud: Point | undefined;
  for (const row of rows) {
    const tallest = Math.max(...row.map(radiusOf)) * scale;
    const y = top + arrowLength(pen) + 1 + tallest;
    const last = row.at(-1) as Wheel;
    const hub = point(left * scale, y);
    if (stud) pen.line('centre', stud, point(hub.x, y - radiusOf(last) * scale - arrowLength(pen) - 1.6));
    drawRow(pen, row, hub, scale, tallest);
    top = pen.extent.bottom + 1.2 * size;
    stud = point(hub.x, top - 1 * size);
  }
}

/** Wheels side by side, leftwards from the last; counts inside, names below on one line. */
function drawRow(pen: Pen, row: readonly Wheel[], hub: Point, scale: number, tallest: number): void {
  const size = pen.style.labelSize;
  const centres: number[] = [];
  let edge = hub.x + radiusOf(row.at(-1) as Wheel) * scale;
  for (const wheel of [...row].reverse()) {
    centres.unshift(edge - radiusOf(wheel) * scale);
    edge -= 2 * radiusOf(wheel) * scale;
  }
  const level = hub.y + tallest + 0.9 * size;
  const names = row.map(({ name, teeth }, i) =>
    teeth === undefined || fitsInside(pen, teeth, radiusOf(row[i] as Wheel) * scale)
      ? name
      : `${name}, ${teeth}`,
  );
  const rooms = names.map((name) => pen.textSize(name).width + 0.6 * size);
  const places = spread(centres, rooms);
  row.forEach((wheel, i) => {
    const centre = point(centres[i] ?? 0, hub.y);
    const radius = radiusOf(wheel) * scale;
    pen.circle(wheel.teeth === undefined ? 'fine' : 'outline', centre, radius);
    if (wheel.teeth === undefined) pen.circle('fine', centre, 0.6, 'ink');
    else if (names[i] === wheel.name) pen.text(String(wheel.teeth), centre, { weight: 600 });
    drawTurn(pen, centre, radius, wheel.turn);
    const below = point(places[i] ?? 0, level);
    pen.line(
      'dimension',
      point(centre.x, hub.y + radius + 0.4),
      point(centre.x, level - 0.5 * size),
      point(below.x, level - 0.15 * size),
    );
    pen.text(names[i] ?? '', below, { sit: 'below' });
  });
}

/** An arrow over a wheel, the way it turns. */
function drawTurn(pen: Pen, centre: Point, radius: number, turn: number): void {
  const off = radius + 0.6 * arrowLength(pen);
  const half = Math.min(0.6, (1.6 * arrowLength(pen)) / off);
  const [from, to] = turn > 0 ? [-half, half] : [half, -half];
  const bend = (arrowLength(pen) / off) * Math.sign(to);
  pen.stroke('fine', (trace) => trace.arc(centre, off, from, to - bend / 2));
  arrowhead(pen, onBearing(off, to, centre), onBearing(off, to - bend, centre));
}
