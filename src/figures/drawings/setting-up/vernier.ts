import { z } from 'zod';
import { MM_PER_INCH } from '../../../units/length.js';
import { arrow } from '../../drafting/arrow.js';
import { breakLine } from '../../drafting/break-line.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure, type FigureStyle } from '../../figure.js';
import { length, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { graduate, linesIn, wholes } from './graduations.js';

/** How a calliper is engraved, lengths in mm: so many lines of the vernier stand against one division less. */
interface Engraving {
  readonly division: number;
  readonly lines: number;
  /** Divisions from one line to the next longer one, and to the next with a number. */
  readonly longer: number;
  readonly numbered: number;
  readonly number: (division: number) => string;
  readonly vernierNumber: (line: number) => string;
  /** Scales to try of the whole view, and how much larger the close-up is. */
  readonly scales: readonly number[];
  readonly closer: number;
}

const ENGRAVINGS: Readonly<Record<'mm' | 'inch', Engraving>> = {
  mm: {
    division: 1,
    lines: 50,
    longer: 5,
    numbered: 10,
    number: String,
    vernierNumber: (line) => String(line / 5),
    scales: [2, 1],
    closer: 10,
  },
  inch: {
    division: 0.025 * MM_PER_INCH,
    lines: 25,
    longer: 2,
    numbered: 4,
    number: (division) => String(division % 40 === 0 ? division / 40 : (division / 4) % 10),
    vernierNumber: String,
    scales: [5, 2],
    closer: 4,
  },
};

const LEAST = { mm: 0.02, inch: 0.001 * MM_PER_INCH };

/** Lines of the vernier from one number to the next. */
const GROUP = 5;

/** Length of a graduation, and of those that are longer and longest, mm on the paper. */
const REACH = { short: 3, longer: 4.2, longest: 5.4 } as const;

/** Main scale that is seen before the vernier, mm on the paper. */
const BEFORE = 14;

/** Main scale and vernier of a calliper at a reading, and close up where two of their lines are in step. */
export const vernier = defineFigure({
  name: 'vernier',
  title: 'Reading a vernier',
  given: z.strictObject({
    reading: length(0, 200),
    units: word('mm', 'inch').optional(),
    /** Whether arrows number what is read: the main line before the nought, and the lines in step. */
    marked: z.boolean().default(false).describe('true or false'),
  }),
  draw({ reading, marked, units: own }, style) {
    const units = own ?? style.units;
    const engraving = ENGRAVINGS[units];
    const { division, lines, vernierNumber } = engraving;
    const steps = linesIn(reading, units, LEAST);
    const passed = Math.floor(steps / lines);
    const line = steps % lines;
    const say = (mm: number): string => inWords(mm, { units });
    const group = Math.floor(line / GROUP) * GROUP;
    const past = line === group ? '' : `${line - group} after `;
    const label =
      `A vernier calliper: the vernier’s nought has passed ${say(passed * division)} on the main scale, and the ` +
      `vernier’s line ${past}${vernierNumber(group)} is in step with a line of the main scale.`;
    return firstThatFits(engraving.scales, style, (scale) => {
      const pen = new Pen(style);
      drawScales(pen, { engraving, passed, line, scale, marked, units });
      const below = pen.extent.bottom + 1.2 * style.labelSize;
      drawCloseUp(pen, { engraving, passed, line, scale: scale * engraving.closer, top: below, marked });
      return pen.finish(
        label,
        `${scaleName(scale)}, close-up ${scaleName(scale * engraving.closer)}`.replace('true scale', '1 : 1'),
      );
    });
  },
});

interface View {
  readonly engraving: Engraving;
  /** Divisions of the main scale before the vernier’s nought, and the vernier’s line that is in step. */
  readonly passed: number;
  readonly line: number;
  readonly scale: number;
  readonly marked: boolean;
}

interface Units {
  readonly units: FigureStyle['units'];
}

/** From a line of the vernier to the next, mm. */
const spaced = ({ division, lines }: Engraving): number => (division * (lines - 1)) / lines;

/** Both scales whole. The vernier’s nought stands at the origin, the main scale above the common edge. */
function drawScales(pen: Pen, view: View & Units): void {
  const { engraving, passed, line, scale, marked, units } = view;
  const size = pen.style.labelSize;
  const lead = 0.3 * size;
  const step = spaced(engraving) * scale;
  const nought = (passed + line / engraving.lines) * engraving.division * scale;
  const plate = { left: -Math.max(3, size), right: engraving.lines * step + Math.max(3, size) };
  const ends = { left: -Math.max(Math.min(nought, BEFORE), -plate.left + 2), right: plate.right + 2 };
  const top = mainScale(pen, {
    engraving,
    nought,
    scale,
    from: ends.left + 1,
    to: ends.right - 1,
    numbers: true,
  });
  const foot = vernierScale(pen, { engraving, from: 0, to: engraving.lines, at: (i) => i * step, edge: 0 });
  const tall = { left: plate.left, right: plate.right, top: 0, bottom: foot + lead };
  pen.rectangle('outline', tall);
  pen.line('outline', point(ends.left, 0), point(plate.left, 0));
  pen.line('outline', point(plate.right, 0), point(ends.right, 0));
  pen.line('outline', point(ends.left, top - lead), point(ends.right, top - lead));
  for (const x of [ends.left, ends.right]) breakLine(pen, point(x, top - lead), point(x, 0));
  pen.text(`main scale, ${mainUnit(view)}`, point(ends.right, top - 2 * lead), {
    anchor: 'end',
    sit: 'above',
  });
  pen.text(`vernier, ${plainLeast(units)} a line`, point(plate.right, tall.bottom + lead), {
    anchor: 'end',
    sit: 'below',
  });
  if (!marked) return;
  const x = passed * engraving.division * scale - nought;
  const high = top - lead - Math.max(5, 1.4 * size);
  arrow(pen, point(x, high), point(x, -clearOf(pen, engraving, passed, engraving.division * scale) - 0.6));
  pen.text('1', point(x, high - lead), { sit: 'above', weight: 600 });
}

/** The unit of the main scale; past the first inch, the inch that its tenths follow, which may be out of sight. */
function mainUnit({ units, passed, engraving }: View & Units): string {
  const inches = units === 'mm' ? 0 : Math.floor((passed * engraving.division) / MM_PER_INCH + 1e-9);
  return inches === 0 ? LABELS[units] : `past ${inches}\u2009in`;
}

const LABELS = { mm: 'mm', inch: 'in' } as const;

const plainLeast = (units: FigureStyle['units']): string =>
  units === 'mm' ? `${plain(LEAST.mm)}\u2009mm` : `${plain(LEAST.inch / MM_PER_INCH)}\u2009in`;

/** How far above the edge an arrow to a line of the main scale must end: clear of the line, and of a number beside it. */
function clearOf(pen: Pen, { numbered, number, longer }: Engraving, division: number, pitch: number): number {
  const nearest = Math.round(division / numbered) * numbered;
  const half = pen.textSize(number(nearest), { weight: 600 }).width / 2;
  if (Math.abs(division - nearest) * pitch < half + 0.6)
    return REACH.longest + 0.3 * pen.style.labelSize + pen.textSize('0').height;
  return division % longer === 0 ? REACH.longer : REACH.short;
}

/** The lines of the main scale between two places, their edge at nought. Gives back how high their numbers reach. */
function mainScale(
  pen: Pen,
  how: {
    engraving: Engraving;
    nought: number;
    scale: number;
    from: number;
    to: number;
    numbers: boolean;
    edge?: number;
  },
): number {
  const { engraving, nought, scale, from, to, numbers, edge = 0 } = how;
  const size = pen.style.labelSize;
  const { division, longer, numbered, number } = engraving;
  const pitch = division * scale;
  const at = (i: number): number => i * pitch - nought;
  const seen = wholes(Math.max(0, (from + nought) / pitch - 1e-9), (to + nought) / pitch + 1e-9);
  const reach = (i: number): number =>
    i % numbered === 0 ? REACH.longest : i % longer === 0 ? REACH.longer : REACH.short;
  graduate(
    pen,
    edge,
    seen.map((i) => ({ x: at(i), to: edge - reach(i) })),
  );
  const level = edge - REACH.longest - 0.3 * size;
  if (!numbers) return level;
  for (const i of seen.filter((one) => one % numbered === 0)) {
    const weight = numbered === 4 && i % 40 === 0 ? 600 : 400;
    const half = pen.textSize(number(i), { weight }).width / 2;
    if (at(i) - half < from - 0.4 || at(i) + half > to + 0.4) continue;
    pen.text(number(i), point(at(i), level), { sit: 'above', weight });
  }
  return level - pen.textSize('0').height;
}

/** Lines of the vernier, which hang from the edge. Gives back how low their numbers reach. */
function vernierScale(
  pen: Pen,
  how: { engraving: Engraving; from: number; to: number; at: (line: number) => number; edge: number },
): number {
  const { engraving, from, to, at, edge } = how;
  const lines = wholes(from, to);
  graduate(
    pen,
    edge,
    lines.map((i) => ({ x: at(i), to: edge + (i % GROUP === 0 ? REACH.longest : REACH.short) })),
  );
  const level = edge + REACH.longest + 0.3 * pen.style.labelSize;
  for (const i of lines.filter((one) => one % GROUP === 0))
    pen.text(engraving.vernierNumber(i), point(at(i), level), { sit: 'below' });
  return level + pen.textSize('0').height;
}

/** The lines about those that are in step, from one number of the vernier to the next, so that no place tells more. */
function drawCloseUp(pen: Pen, view: View & { top: number }): void {
  const { engraving, passed, line, scale, top, marked } = view;
  const size = pen.style.labelSize;
  const lead = 0.3 * size;
  const group = Math.floor(line / GROUP) * GROUP;
  const step = spaced(engraving) * scale;
  const at = (i: number): number => (i - group + 1) * step;
  const first = Math.max(0, group - 1);
  const last = Math.min(engraving.lines, group + GROUP);
  const ends = { left: at(group - 1) - 0.4 * step, right: at(group + GROUP) + 0.4 * step };
  const edge = top + pen.textSize('0').height + 2 * lead + REACH.longest;
  // In step: this line of the vernier stands under this one of the main scale.
  const nought = (passed + line) * engraving.division * scale - at(line);
  mainScale(pen, { engraving, nought, scale, from: ends.left + 1, to: ends.right - 1, numbers: false, edge });
  const foot = vernierScale(pen, { engraving, from: first, to: last, at, edge });
  pen.text('close-up', point(ends.left, top), { anchor: 'start', sit: 'below' });
  pen.line('outline', point(ends.left, edge), point(ends.right, edge));
  for (const x of [ends.left, ends.right])
    breakLine(pen, point(x, edge - REACH.longest - lead), point(x, foot + lead));
  if (!marked) return;
  const low = foot + lead + Math.max(4, 1.2 * size);
  arrow(pen, point(at(line), low), point(at(line), (line % GROUP === 0 ? foot : edge + REACH.short) + 0.6));
  pen.text('2', point(at(line), low + lead), { sit: 'below', weight: 600 });
}
