import { z } from 'zod';
import { MM_PER_INCH } from '../../../units/length.js';
import { arrow } from '../../drafting/arrow.js';
import { breakLine } from '../../drafting/break-line.js';
import { point } from '../../drafting/point.js';
import { firstThatFits } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { graduate, linesIn, wholes } from './graduations.js';

/** How a micrometer is engraved, lengths in mm: the thimble moves on by a pitch for each turn. */
interface Engraving {
  readonly pitch: number;
  /** Lines round the thimble. */
  readonly lines: number;
  /** Turns from one number of the sleeve to the next. */
  readonly numbered: number;
  readonly number: (turns: number) => string;
  /** Lines from one number of the thimble to the next, and the least radius of the thimble, in font sizes. */
  readonly group: number;
  readonly radius: number;
  /** Whether the lines of odd turns stand below the datum line. */
  readonly below: boolean;
}

const ENGRAVINGS: Readonly<Record<'mm' | 'inch', Engraving>> = {
  mm: {
    pitch: 0.5,
    lines: 50,
    numbered: 10,
    number: (turns) => String(turns / 2),
    group: 5,
    radius: 2.8,
    below: true,
  },
  inch: {
    pitch: 0.025 * MM_PER_INCH,
    lines: 25,
    numbered: 4,
    number: (turns) => String((turns / 4) % 10),
    group: 1,
    radius: 4,
    below: false,
  },
};

const LEAST = { mm: 0.01, inch: 0.001 * MM_PER_INCH };

/** Sleeve that is seen, in turns of the thimble. */
const SEEN = 24;

/** Length of a graduation along and across, and of the longer ones, mm on the paper. */
const REACH = { short: 3.2, long: 4.6 } as const;

/** Every fifth line of the thimble is longer. */
const GROUP = 5;

/** Sleeve and thimble of a micrometer at a reading. */
export const micrometer = defineFigure({
  name: 'micrometer',
  title: 'Reading a micrometer',
  given: z.strictObject({
    reading: length(0, MM_PER_INCH),
    units: word('mm', 'inch').optional(),
    /** Whether arrows number what is read: the last main line, those after it, and the thimble. */
    marked: z.boolean().default(false).describe('true or false'),
  }),
  draw({ reading, marked, units: own }, style) {
    const units = own ?? style.units;
    const engraving = ENGRAVINGS[units];
    const { lines, below, pitch } = engraving;
    const steps = linesIn(reading, units, LEAST);
    const turns = Math.floor(steps / lines);
    const line = steps % lines;
    const whole = below ? turns - (turns % 2) : turns - (turns % 4);
    const say = (mm: number): string => inWords(mm, { units });
    const more = below ? 'the half-millimetre line after it' : `${turns - whole} more after it`;
    const between = turns === whole ? 'none after it' : more;
    const label =
      `A micrometer: the sleeve shows its line for ${say(whole * pitch)} and ${between}, and line ${line} of the ` +
      'thimble stands at the datum line.';
    return firstThatFits([5, 2], style, (scale) => {
      const pen = new Pen(style);
      drawMicrometer(pen, { engraving, turns, whole, line, scale, marked });
      return pen.finish(label, `along the spindle ${scale} : 1`);
    });
  },
});

interface View {
  readonly engraving: Engraving;
  /** Turns of the thimble, those to the last main line of the sleeve, and the thimble’s line at the datum line. */
  readonly turns: number;
  readonly whole: number;
  readonly line: number;
  readonly scale: number;
  readonly marked: boolean;
}

/** The thimble’s edge stands at the origin, the sleeve to its left; the datum line is level with it. */
function drawMicrometer(pen: Pen, view: View): void {
  const { engraving, turns, whole, line, scale, marked } = view;
  const size = pen.style.labelSize;
  const edge = Math.max(16, engraving.radius * size);
  const sleeve = 0.88 * edge;
  const body = 1.16 * edge;
  const pitch = engraving.pitch * scale;
  const open = (turns + line / engraving.lines) * pitch;
  const room = pen.textSize('sleeve').width + 3 * size;
  const left = -Math.max(room, Math.min(open + Math.max(4, size), SEEN * pitch));
  const at = (turn: number): number => turn * pitch - open;

  for (const y of [-sleeve, sleeve]) pen.line('outline', point(left, y), point(0, y));
  breakLine(pen, point(left, -sleeve), point(left, sleeve));
  pen.line('outline', point(left, 0), point(0, 0));
  const top = sleeveLines(pen, { engraving, turns, left, at });
  const bevel = thimble(pen, { engraving, line, edge, body });
  const end = bevel + Math.max(8, 1.5 * size);
  for (const side of [-1, 1])
    pen.line('outline', point(0, side * edge), point(bevel, side * body), point(end, side * body));
  pen.line('outline', point(0, -edge), point(0, edge));
  breakLine(pen, point(end, -body), point(end, body));
  const beneath = body + 0.3 * size;
  pen.text('sleeve', point(left, beneath), { anchor: 'start', sit: 'below' });
  pen.text('thimble', point(end, beneath), { anchor: 'end', sit: 'below' });
  if (!marked) return;
  const high = -body - Math.max(2, 0.5 * size);
  const tall = whole % engraving.numbered === 0 ? top : -REACH.short;
  arrow(pen, point(at(whole), high), point(at(whole), tall - 0.6));
  pen.text('1', point(at(whole), high - 0.2 * size), { sit: 'above', weight: 600 });
  if (turns > whole) {
    const foot = engraving.below ? REACH.short + 0.6 : 0.8;
    arrow(pen, point(at(turns), -high), point(at(turns), foot));
    pen.text('2', point(at(turns), -high + 0.2 * size), { sit: 'below', weight: 600 });
  }
  const far = end + Math.max(6, 1.5 * size);
  arrow(pen, point(far, 0), point(bevel, 0));
  pen.text('3', point(far + 0.3 * size, 0), { anchor: 'start', weight: 600 });
}

/** The lines that show on the sleeve, and their numbers. Gives back how high those reach. */
function sleeveLines(
  pen: Pen,
  how: { engraving: Engraving; turns: number; left: number; at: (turn: number) => number },
): number {
  const { engraving, turns, left, at } = how;
  const size = pen.style.labelSize;
  const { numbered, number, below } = engraving;
  const shown = wholes(0, turns).filter((turn) => at(turn) > left + 1);
  graduate(
    pen,
    0,
    shown.map((turn) => {
      const reach = turn % numbered === 0 ? REACH.long : REACH.short;
      return { x: at(turn), to: below && turn % 2 !== 0 ? reach : -reach };
    }),
  );
  const level = -REACH.long - 0.3 * size;
  for (const turn of shown.filter((one) => one % numbered === 0)) {
    const half = pen.textSize(number(turn)).width / 2;
    // The thimble would cover the right half of a number whose line has only just come out.
    const x = Math.min(at(turn), -half - 0.6);
    if (x - half > left + 1) pen.text(number(turn), point(x, level), { sit: 'above' });
  }
  return level - pen.textSize('0').height;
}

/** The lines round the bevel as they are seen from the front, and their numbers. Gives back where the bevel ends. */
function thimble(
  pen: Pen,
  { engraving, line, edge, body }: { engraving: Engraving; line: number; edge: number; body: number },
): number {
  const size = pen.style.labelSize;
  const start = 6.4 + 0.3 * size;
  const bevel = start + pen.textSize('45').width + 0.4 * size;
  const radius = (x: number): number => edge + ((body - edge) * x) / bevel;
  const step = (2 * Math.PI) / engraving.lines;
  const seen = wholes(line - engraving.lines / 4, line + engraving.lines / 4);
  const rise = (one: number): number => Math.sin((one - line) * step);
  pen.stroke('fine', (trace) => {
    for (const one of seen.filter((each) => Math.abs(rise(each)) < 0.95)) {
      const reach = one % GROUP === 0 ? 6.4 : 4;
      trace.moveTo(point(0, -edge * rise(one))).lineTo(point(reach, -radius(reach) * rise(one)));
    }
  });
  const room = pen.textSize('0').height;
  const levels: number[] = [];
  // From the datum line outward: towards the rim the lines close up, and leave no room for numbers.
  const outward = seen.toSorted((a, b) => Math.abs(a - line) - Math.abs(b - line));
  for (const one of outward.filter((each) => each % engraving.group === 0)) {
    const y = -radius(start) * rise(one);
    if (Math.abs(y) + room / 2 + 0.8 > edge) continue;
    if (levels.some((level) => Math.abs(level - y) < room + 0.2)) continue;
    levels.push(y);
    pen.text(String((one + engraving.lines) % engraving.lines), point(start, y), { anchor: 'start' });
  }
  return bevel;
}
