import { z } from 'zod';
import { widthDimension } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { notesAt } from '../../drafting/leader.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';

const SCALES = [5, 2, 1, 0.5, 0.2, 0.1] as const;
const WIDEST = 90;

/** Levels over the plate in the side view, mm on paper: only what lies across the arbors is to scale. */
const LEVEL = { cannon: -5, hour: -13, dial: -21, hourHand: -25, minuteHand: -31 } as const;
const THICK = { wheel: 2, pinion: 5, plate: 3, dial: 1, hand: 1.2 } as const;

/** Radii of the tubes, mm on paper. */
const TUBE = { arbor: 0.8, cannon: 1.6, hour: 2.5 } as const;

/** The wheels under the dial from the front and, below, from the side; both pairs on the same two arbors. */
export const motionWork = defineFigure({
  name: 'motion-work',
  title: 'Motion work',
  given: z.strictObject({
    cannonPinion: count(4, 200),
    minuteWheel: count(4, 200),
    minutePinion: count(4, 200),
    hourWheel: count(4, 200),
    module: toothModule().default(0.8),
  }),
  draw(given, style) {
    const { cannonPinion, minuteWheel, minutePinion, hourWheel, module } = given;
    // The second pair’s module is whatever brings it to the same centres.
    const second = (module * (cannonPinion + minuteWheel)) / (minutePinion + hourWheel);
    const centres = (module * (cannonPinion + minuteWheel)) / 2;
    const modules =
      Math.abs(second - module) < 1e-9
        ? `module ${plain(module)}`
        : `modules ${plain(module)} and ${plain(second)}`;
    const ratio = (minuteWheel * hourWheel) / (cannonPinion * minutePinion);
    const label =
      `Motion work of ${plain(ratio)} to 1, ${modules}: cannon pinion ${cannonPinion} drives the minute wheel ` +
      `${minuteWheel}, whose pinion ${minutePinion} drives the hour wheel ${hourWheel}.`;
    const reach = (module * minuteWheel) / 2 + centres + (second * hourWheel) / 2;
    const scales = SCALES.filter((scale) => scale <= 0.1 || reach * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const radii: Radii = {
        cannon: (module * cannonPinion * scale) / 2,
        minute: (module * minuteWheel * scale) / 2,
        pinion: (second * minutePinion * scale) / 2,
        hour: (second * hourWheel * scale) / 2,
        centres: centres * scale,
      };
      const high = Math.max(radii.minute, radii.hour, radii.cannon, radii.pinion);
      drawFront(pen, radii, high);
      // Touching pairs leave each wheel’s outer quarter free of the other’s circle.
      pen.text(`hour wheel ${hourWheel}`, point(-2, -Math.max(radii.hour, radii.cannon) - 1), {
        anchor: 'end',
        sit: 'above',
      });
      const besideMinute = point(radii.centres + 2, -Math.max(radii.minute, radii.pinion) - 1);
      pen.text(`minute wheel ${minuteWheel}`, besideMinute, { anchor: 'start', sit: 'above' });
      widthDimension(pen, {
        from: point(0, -high - 3),
        to: point(radii.centres, -high - 3),
        y: -high - 3 - Math.max(5, 1.5 * style.labelSize),
        label: `centre distance a = ${inWords(centres, style)}`,
      });
      const plate = high + 8 - LEVEL.minuteHand;
      const right = drawSide(pen, radii, plate);
      notesAt(pen, right + Math.max(5, 2 * style.labelSize), [
        { text: 'minute hand', tip: point(handEnd(radii), plate + LEVEL.minuteHand) },
        { text: 'hour hand', tip: point(0.7 * handEnd(radii), plate + LEVEL.hourHand) },
        { text: 'dial', tip: point(right, plate + LEVEL.dial) },
        {
          text: [`minute pinion ${minutePinion} drives`, `hour wheel ${hourWheel}`],
          tip: point(radii.centres + radii.pinion, plate + LEVEL.hour),
        },
        {
          text: [`cannon pinion ${cannonPinion} drives`, `minute wheel ${minuteWheel}`],
          tip: point(radii.centres + radii.minute, plate + LEVEL.cannon),
        },
      ]);
      return pen.finish(label, `${scaleName(scale)} across the arbors`);
    });
  },
});

/** Pitch radii and centre distance, mm on paper. */
interface Radii {
  readonly cannon: number;
  readonly minute: number;
  readonly pinion: number;
  readonly hour: number;
  readonly centres: number;
}

/** Where the minute hand ends. */
const handEnd = ({ hour, centres, minute }: Radii): number => 0.6 * (centres + Math.max(minute, hour));

/** The four pitch circles on their two arbors. */
function drawFront(pen: Pen, { cannon, minute, pinion, hour, centres }: Radii, high: number): void {
  const [centre, arbor] = [point(0, 0), point(centres, 0)];
  pen.circle('outline', centre, cannon);
  pen.circle('outline', centre, hour);
  pen.circle('outline', arbor, minute);
  pen.circle('outline', arbor, pinion);
  pen.line('centre', point(-Math.max(hour, cannon) - 3, 0), point(centres + Math.max(minute, pinion) + 3, 0));
  for (const { x } of [centre, arbor]) pen.line('centre', point(x, -high - 3), point(x, high + 3));
}

/** The same from the side over the plate, with the dial and the hands. Gives back its right edge. */
function drawSide(pen: Pen, radii: Radii, plate: number): number {
  const { cannon, minute, pinion, hour, centres } = radii;
  const left = -Math.max(hour, cannon) - 4;
  const right = Math.max(centres + Math.max(minute, pinion), handEnd(radii)) + 4;
  const box = (x: number, radius: number, level: number, thickness: number): void =>
    pen.rectangle(
      'outline',
      {
        left: x - radius,
        right: x + radius,
        top: plate + level - thickness / 2,
        bottom: plate + level + thickness / 2,
      },
      'paper',
    );
  const tube = (x: number, radius: number, from: number, to: number): void =>
    box(x, radius, (from + to) / 2, Math.abs(to - from));
  const corners = [
    point(left, plate),
    point(right, plate),
    point(right, plate + THICK.plate),
    point(left, plate + THICK.plate),
  ];
  hatch(pen, [corners], { spacing: 1.6 });
  pen.polygon('outline', corners);
  tube(centres, TUBE.arbor, 0, LEVEL.hour - THICK.pinion / 2 - 1);
  box(centres, minute, LEVEL.cannon, THICK.wheel);
  box(centres, pinion, LEVEL.hour, THICK.pinion);
  tube(0, TUBE.arbor, 0, LEVEL.minuteHand - 2);
  tube(0, TUBE.cannon, -1, LEVEL.minuteHand);
  box(0, cannon, LEVEL.cannon, THICK.pinion);
  tube(0, TUBE.hour, LEVEL.hour, LEVEL.hourHand);
  box(0, hour, LEVEL.hour, THICK.wheel);
  for (const [from, to] of [
    [left, -TUBE.hour],
    [TUBE.hour, right],
  ] as const)
    box((from + to) / 2, (to - from) / 2, LEVEL.dial, THICK.dial);
  const hand = (start: number, end: number, level: number): void =>
    box((start + end) / 2, (end - start) / 2, level, THICK.hand);
  hand(-TUBE.hour, 0.7 * handEnd(radii), LEVEL.hourHand);
  hand(-TUBE.cannon, handEnd(radii), LEVEL.minuteHand);
  return right;
}
