import { z } from 'zod';
import { InputError } from '../../../diagnostics/errors.js';
import { counted } from '../../../units/words.js';
import { onBearing, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { count } from '../../given.js';
import { Pen } from '../../pen.js';
import { coarseness } from '../index-plate-circles.js';

/** A notch is drawn as a V where there is so much room for it, mm; else as a line. */
const ROOM_FOR_V = 2;
const LEAST_PITCH = 1.1;

/** One stop in so many is numbered, where every number would be too many. */
const STEPS: readonly number[] = [1, 2, 5, 10, 20, 50, 100, 200];

/** A notched plate with the detent in notch 0 and every stop marked and numbered. */
export const directPlate = defineFigure({
  name: 'direct-plate',
  title: 'Direct dividing from a notched plate',
  given: z.strictObject({ plate: count(2, 400), divisions: count(2, 400) }),
  draw({ plate, divisions }, style) {
    if (plate % divisions !== 0)
      throw new InputError('divisions', divisions, `a count that goes into the plate’s ${plate} notches`);
    const step = plate / divisions;
    const pen = new Pen(style);
    const size = style.labelSize;
    const figure = pen.textSize(String(plate - step), { weight: 600 });
    const detent = 2.6 * coarseness(pen);
    const band = Math.max(figure.height, figure.width) + 1.1 * size;
    const most = style.maxWidth / 2 - band - 1;
    const round = (between: number): number => (between * plate) / 2 / Math.PI;
    const wanted = Math.max(18 * coarseness(pen), Math.min(round(ROOM_FOR_V + 0.1), 45), round(LEAST_PITCH));
    const radius = Math.min(most, wanted);
    const pitch = (2 * Math.PI * radius) / plate;
    const depth = Math.min(2.4, 0.55 * Math.max(pitch, ROOM_FOR_V));
    const bearing = (notch: number): number => (2 * Math.PI * notch) / plate;

    if (pitch >= ROOM_FOR_V) notchedRim(pen, plate, radius, depth);
    else {
      pen.circle('outline', point(0, 0), radius);
      for (let notch = 0; notch < plate; notch++)
        pen.line('fine', onBearing(radius, bearing(notch)), onBearing(radius - depth, bearing(notch)));
    }
    // A dot for each stop, as large as leaves them apart.
    const inside = radius - depth - 1.4;
    const dot = Math.min(0.8, (0.32 * 2 * Math.PI * inside) / divisions);
    for (let stop = 1; stop < divisions; stop++)
      pen.circle('fine', onBearing(inside, bearing(stop * step)), dot, 'ink');
    pen.circle('outline', point(0, 0), 0.22 * radius);

    // The detent points into notch 0, which is at the top.
    const tip = -(radius - depth) - 0.3;
    const half = Math.min(0.35 * pitch, 0.8);
    const shank = Math.max(0.6, half);
    pen.polygon(
      'fine',
      [
        point(0, tip),
        point(half, tip - depth),
        point(shank, -radius - detent),
        point(-shank, -radius - detent),
        point(-half, tip - depth),
      ],
      'ink',
    );
    numberStops(pen, { divisions, step, radius, bearing, top: -radius - detent });

    const each = `move ${counted(step, 'notch', 'notches')} each time`;
    const move = `${counted(divisions, 'division')} on the ${plate}-notch plate: ${each}`;
    const below = pen.extent.bottom + 0.8 * size;
    const words = wrapped(pen, move, style.maxWidth - 2, { weight: 600 });
    pen.text(words, point(0, below), { sit: 'below', weight: 600 });
    const label = `Plate with ${plate} notches, detent in notch 0, and the stops of ${counted(divisions, 'division')}: ${each}.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});

/** The edge of the plate, with a V at each notch. */
function notchedRim(pen: Pen, plate: number, radius: number, depth: number): void {
  const half = Math.min(0.32 * ((2 * Math.PI) / plate), depth / radius);
  pen.stroke('outline', (trace) => {
    trace.moveTo(onBearing(radius, half));
    for (let notch = 1; notch <= plate; notch++) {
      const at = (2 * Math.PI * notch) / plate;
      trace
        .arc(point(0, 0), radius, at - (2 * Math.PI) / plate + half, at - half)
        .lineTo(onBearing(radius - depth, at))
        .lineTo(onBearing(radius, at + half));
    }
    trace.close();
  });
}

/** The notch of each stop outside the rim, or of as many as there is room for; 0 stands over the detent. */
function numberStops(
  pen: Pen,
  how: { divisions: number; step: number; radius: number; bearing: (notch: number) => number; top: number },
): void {
  const { divisions, step, radius, bearing, top } = how;
  const size = pen.style.labelSize;
  const widest = pen.textSize(String((divisions - 1) * step)).width + 0.45 * size;
  const round = 2 * Math.PI * (radius + 0.8 * size);
  const every = STEPS.find((one) => Math.ceil(divisions / one) * widest <= round) ?? divisions;
  pen.text('0', point(0, top - 0.25 * size), { sit: 'above', weight: 600 });
  for (let stop = every; stop < divisions; stop += every) {
    const at = bearing(stop * step);
    // None so near to the detent that it would touch it.
    if (Math.min(at, 2 * Math.PI - at) * (radius + 0.8 * size) < widest + 1) continue;
    const box = pen.textSize(String(stop * step));
    const reach = (box.width * Math.abs(Math.sin(at)) + box.height * Math.abs(Math.cos(at))) / 2;
    pen.text(String(stop * step), onBearing(radius + 0.35 * size + reach, at));
  }
}
