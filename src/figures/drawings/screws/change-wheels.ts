import { z } from 'zod';
import { arrow } from '../../drafting/arrow.js';
import { type Point, point } from '../../drafting/point.js';
import { firstThatFits } from '../../drafting/scale.js';
import { spread } from '../../drafting/spread.js';
import { defineFigure } from '../../figure.js';
import { count, numbers } from '../../given.js';
import { Pen } from '../../pen.js';

/** Diameter as drawn for one tooth, mm; the wheels of a train are in proportion. */
const WAYS = [1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2, 0.15, 0.1];

/** Taller than this and a figure crowds the words off a page, mm. */
const TALLEST = 80;

interface Wheel {
  readonly teeth: number;
  readonly centre: Point;
  readonly radius: number;
  readonly drives: boolean;
  readonly on: string;
}

const wheels = (what: string) => numbers(count(10, 200), 2, what);

/** A train of change wheels as pitch circles, each named and counted. */
export const changeWheelsFigure = defineFigure({
  name: 'change-wheels',
  title: 'The train of change wheels',
  given: z
    .strictObject({
      drivers: wheels('one or two drivers, the one on the spindle first'),
      driven: wheels('as many driven wheels, the one on the lead screw last'),
      idler: count(10, 200).optional(),
    })
    .refine((g) => g.drivers.length === g.driven.length, {
      path: ['driven'],
      message: 'as many driven wheels as drivers',
    })
    .refine((g) => g.idler === undefined || g.drivers.length === 1, {
      path: ['idler'],
      message: 'an idler in a simple train only',
    }),
  draw({ drivers, driven, idler }, style) {
    const said = (list: readonly number[]): string => list.join(' and ');
    const kind = drivers.length === 1 ? 'simple' : 'compound';
    const label =
      `A ${kind} train of change wheels as pitch circles: ${said(drivers)} driving, ${said(driven)} driven` +
      `${idler === undefined ? '' : `, with an idler of ${idler} between`}.`;
    return firstThatFits(WAYS, style, (perTooth) => {
      const pen = new Pen(style);
      const train = trainOf(drivers, driven, idler, perTooth);
      if (Math.max(...train.map(({ radius }) => 2 * radius)) > TALLEST) return undefined;
      drawTrain(pen, train);
      const product = (list: readonly number[]) =>
        list.length === 1 ? `${list[0]}` : `(${list.join(' × ')})`;
      pen.text(
        `drivers over driven = ${product(drivers)}/${product(driven)}`,
        point(pen.extent.left, pen.extent.bottom + style.labelSize),
        { anchor: 'start', sit: 'below' },
      );
      return pen.finish(label, 'in proportion, not to scale');
    });
  },
});

/** The wheels on a level line from the spindle to the lead screw, each in touch with the next. */
function trainOf(
  drivers: readonly number[],
  driven: readonly number[],
  idler: number | undefined,
  perTooth: number,
): Wheel[] {
  const radius = (teeth: number): number => (teeth * perTooth) / 2;
  const [first = 0, second] = drivers;
  const [third = 0, fourth = 0] = driven;
  const wheel = (teeth: number, x: number, drives: boolean, on: string): Wheel => ({
    teeth,
    centre: point(x, 0),
    radius: radius(teeth),
    drives,
    on,
  });
  const spindle = wheel(first, 0, true, 'on the spindle');
  if (second === undefined) {
    const gap = idler === undefined ? 0 : 2 * radius(idler);
    const last = wheel(third, radius(first) + gap + radius(third), false, 'on the lead screw');
    return idler === undefined
      ? [spindle, last]
      : [spindle, wheel(idler, radius(first) + radius(idler), false, 'idler'), last];
  }
  const stud = radius(first) + radius(third);
  return [
    spindle,
    wheel(third, stud, false, 'on the stud'),
    wheel(second, stud, true, 'on the stud'),
    wheel(fourth, stud + radius(second) + radius(fourth), false, 'on the lead screw'),
  ];
}

function drawTrain(pen: Pen, train: readonly Wheel[]): void {
  const size = pen.style.labelSize;
  const tallest = Math.max(...train.map(({ radius }) => radius));
  for (const { centre, radius, on } of train) {
    pen.circle(on === 'idler' ? 'hidden' : 'outline', centre, radius);
    const arm = Math.min(2.5, 0.6 * radius);
    pen.line('dimension', point(centre.x - arm, 0), point(centre.x + arm, 0));
    pen.line('dimension', point(centre.x, -arm), point(centre.x, arm));
  }
  const lift = tallest + Math.max(4, 1.2 * size);
  names(
    pen,
    train.filter(({ drives }) => drives),
    -lift,
  );
  names(
    pen,
    train.filter(({ drives }) => !drives),
    lift,
  );
}

/** A row of names over the train or under it, each with an arrow to its own circle. */
function names(pen: Pen, row: readonly Wheel[], level: number): void {
  const size = pen.style.labelSize;
  const above = level < 0;
  const lines = row.map(({ teeth, drives, on }) =>
    on === 'idler' ? [`idler ${teeth}`] : [`${drives ? 'driver' : 'driven'} ${teeth}`, on],
  );
  const widths = lines.map((text) => pen.textSize(text).width + 1.2 * size);
  const places = spread(
    row.map(({ centre }) => centre.x),
    widths,
  );
  row.forEach(({ centre, radius }, i) => {
    const from = point(places[i] ?? centre.x, level);
    arrow(pen, from, point(centre.x, above ? -radius : radius));
    pen.text(lines[i] ?? '', point(from.x, level + (above ? -0.35 : 0.35) * size), {
      sit: above ? 'above' : 'below',
    });
  });
}
