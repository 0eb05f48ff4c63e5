import { z } from 'zod';
import { arrow } from '../../drafting/arrow.js';
import { type Note, notesAt } from '../../drafting/leader.js';
import { point } from '../../drafting/point.js';
import { firstThatFits } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { count, numbers } from '../../given.js';
import { Pen } from '../../pen.js';
import { type Arbor, arborsInARow } from './arbors.js';
import { drawBox, drawClimb, drawPlates, HEIGHT } from './side-view.js';

/** The train from plate to plate, mm on paper: as wide as the page allows. */
const WIDTHS = [90, 75, 60, 48, 38] as const;

/** Levels over the front plate, mm on paper. */
const DIAL = { cannon: 5.5, hour: 13.5, end: 18 } as const;

/** The wheels under the dial, by their counts. */
interface DialWork {
  readonly cannonPinion: number;
  readonly minuteWheel: number;
  readonly minutePinion: number;
  readonly hourWheel: number;
}

const dialCounts = ['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel'] as const;

/** All that turns in a clock, from the side, and what of it counts for the beats of an hour. */
export const trainPath = defineFigure({
  name: 'train-path',
  title: 'Which wheels are counted',
  given: z
    .strictObject({
      wheels: numbers(z.number().int().min(6).max(400), 5, 'teeth of the wheels that drive, each 6 to 400'),
      pinions: numbers(z.number().int().min(4).max(400), 5, 'leaves of the pinions, each 4 to 400'),
      escapeTeeth: count(4, 400),
      hourArbor: count(1, 5).default(2),
      cannonPinion: count(4, 200).optional(),
      minuteWheel: count(4, 200).optional(),
      minutePinion: count(4, 200).optional(),
      hourWheel: count(4, 200).optional(),
      counted: z.boolean().default(true).describe('true or false'),
    })
    .refine((g) => g.pinions.length === g.wheels.length, {
      path: ['pinions'],
      message: 'as many pinions as there are wheels',
    })
    .refine((g) => g.hourArbor <= g.wheels.length, {
      path: ['hourArbor'],
      message: 'an arbor that carries a wheel, the first being 1',
    })
    .refine((g) => new Set(dialCounts.map((name) => g[name] === undefined)).size === 1, {
      path: ['hourWheel'],
      message: 'all four counts under the dial, or none',
    }),
  draw(given, style) {
    const { wheels, pinions, escapeTeeth, counted } = given;
    const hour = given.hourArbor - 1;
    const dial = given.hourWheel === undefined ? undefined : (given as DialWork);
    const label = inWords(given, dial);
    return firstThatFits(WIDTHS, style, (width) => {
      // One module throughout, the escape wheel’s too, in whatever size fills the width.
      const whole = { wheels, pinions, module: 1, escapeTeeth, escapeDiameter: escapeTeeth };
      const [first, last] = reach(arborsInARow(whole, 1), hour, dial);
      const scale = width / (last - first);
      const arbors = arborsInARow(whole, scale);
      const [left, right] = [first * scale, last * scale];
      const pen = new Pen(style);
      const step = Math.max(HEIGHT.step, 2.4 * style.labelSize);
      // The first pair lowest, as the drive climbs; y runs down.
      const levelOf = (stage: number): number => -HEIGHT.room - HEIGHT.pinion / 2 - stage * step;
      const top = levelOf(arbors.length - 1) - HEIGHT.room;
      drawPlates(pen, left - 4, right + 4, top);
      const fill = (inPath: boolean): 'ink' | 'paper' => (counted && inPath ? 'ink' : 'paper');
      for (const [i, arbor] of arbors.entries()) {
        pen.line('outline', point(arbor.x, 0), point(arbor.x, top));
        if (arbor.pinion) drawBox(pen, arbor.x, levelOf(i - 1), arbor.pinion, HEIGHT.pinion, fill(i > hour));
        if (arbor.wheel) drawBox(pen, arbor.x, levelOf(i), arbor.wheel, HEIGHT.wheel, fill(i >= hour));
        if (arbor.pinion && i > (counted ? hour : 0)) drawClimb(pen, arbor, levelOf(i - 1), levelOf(i));
      }
      const notes: Note[] = arbors.flatMap(({ x, pinion }, i) => {
        const wheel = arbors[i - 1]?.wheel;
        if (!pinion || !wheel) return [];
        const text = [`${wheel.name} drives`, pinion.name].join(' ');
        return [{ text, tip: point(x + pinion.radius, levelOf(i - 1)) }];
      });
      const escape = arbors.at(-1);
      if (escape?.wheel)
        notes.push({
          text: escape.wheel.name,
          tip: point(escape.x + escape.wheel.radius, levelOf(arbors.length - 1)),
        });
      const hourX = arbors[hour]?.x ?? 0;
      if (dial) notes.push(...drawDialWork(pen, hourX, top, scale, dial));
      notesAt(pen, right + 4 + Math.max(5, 2 * style.labelSize), notes.reverse());
      const below = HEIGHT.plate + Math.max(5, 1.5 * style.labelSize);
      arrow(pen, point(hourX, below), point(hourX, HEIGHT.plate + 0.4));
      const said = pen.text('turns once an hour', point(hourX, below + 0.6), { sit: 'below' });
      if (counted) drawKey(pen, left - 4, said.bottom + style.labelSize);
      return pen.finish(label, 'not to scale');
    });
  },
});

/** How far all of it reaches to the left and right. */
function reach(arbors: readonly Arbor[], hour: number, dial: DialWork | undefined): [number, number] {
  const ends = arbors.flatMap(({ x, wheel, pinion }) =>
    [wheel, pinion].flatMap((part) => (part ? [x - part.radius, x + part.radius] : [])),
  );
  if (dial) {
    const x = arbors[hour]?.x ?? 0;
    const stud = x - (dial.cannonPinion + dial.minuteWheel) / 2;
    const hourRadius = hourRadiusOf(dial);
    ends.push(x - hourRadius, x + hourRadius, stud - dial.minuteWheel / 2);
  }
  return [Math.min(...ends), Math.max(...ends)];
}

/** Half the teeth of the hour wheel, where both pairs stand on the same two arbors. */
const hourRadiusOf = ({ cannonPinion, minuteWheel, minutePinion, hourWheel }: DialWork): number =>
  ((cannonPinion + minuteWheel) / 2) * (hourWheel / (minutePinion + hourWheel));

/** The wheels over the front plate, with their notes from below upwards. */
function drawDialWork(pen: Pen, x: number, top: number, scale: number, dial: DialWork): Note[] {
  const { cannonPinion, minuteWheel, minutePinion, hourWheel } = dial;
  const plate = top - HEIGHT.plate;
  const centres = ((cannonPinion + minuteWheel) * scale) / 2;
  const hourRadius = hourRadiusOf(dial) * scale;
  const cannon = { name: 'cannon pinion', radius: (cannonPinion * scale) / 2 };
  const [lower, upper] = [plate - DIAL.cannon, plate - DIAL.hour];
  pen.line('outline', point(x, top), point(x, plate - DIAL.end));
  pen.line('outline', point(x - centres, plate), point(x - centres, plate - DIAL.end));
  drawBox(pen, x, lower, cannon, HEIGHT.pinion);
  drawBox(pen, x - centres, lower, { name: '', radius: (minuteWheel * scale) / 2 }, HEIGHT.wheel);
  drawBox(pen, x - centres, upper, { name: '', radius: centres - hourRadius }, HEIGHT.pinion);
  drawBox(pen, x, upper, { name: '', radius: hourRadius }, HEIGHT.wheel);
  return [
    {
      text: [`cannon pinion ${cannonPinion} drives`, `minute wheel ${minuteWheel}`],
      tip: point(x + cannon.radius, lower),
    },
    {
      text: [`minute pinion ${minutePinion} drives`, `hour wheel ${hourWheel}`],
      tip: point(x + hourRadius, upper),
    },
  ];
}

/** What is solid and what is not. */
function drawKey(pen: Pen, left: number, top: number): void {
  const size = pen.style.labelSize;
  let x = left;
  for (const [fill, text] of [
    ['ink', 'counted'],
    ['paper', 'not counted'],
  ] as const) {
    const [right, middle] = [x + 2 * size, top + size / 2];
    pen.rectangle('outline', { left: x, right, top: middle - 1, bottom: middle + 1 }, fill);
    x = pen.text(text, point(right + 0.6 * size, middle), { anchor: 'start' }).right + 2 * size;
  }
}

/** The whole in words, and what is counted. */
function inWords(
  given: {
    readonly wheels: readonly number[];
    readonly pinions: readonly number[];
    readonly escapeTeeth: number;
    readonly hourArbor: number;
    readonly counted: boolean;
  },
  dial: DialWork | undefined,
): string {
  const { wheels, pinions, escapeTeeth, hourArbor, counted } = given;
  const pairs = wheels.map((teeth, i) => `${teeth} driving ${pinions[i]}`).join(', then ');
  const from = wheels[hourArbor - 1];
  const under = dial
    ? ` In front of the plate the cannon pinion ${dial.cannonPinion} drives the minute wheel ${dial.minuteWheel}, whose pinion ${dial.minutePinion} drives the hour wheel ${dial.hourWheel}.`
    : '';
  const path = counted ? ' All from that wheel to the escape wheel are counted, and no others.' : '';
  return (
    `A clock from the side: ${pairs}, which carries the escape wheel of ${escapeTeeth}. ` +
    `The arbor of the wheel ${from} turns once an hour.${under}${path}`
  );
}
