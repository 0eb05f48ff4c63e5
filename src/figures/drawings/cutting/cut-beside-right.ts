import { z } from 'zod';
import type { Given } from '../../../calculations/cutting/given.js';
import { type CutWheel, cut, jobFor } from '../../../calculations/cutting/job.js';
import { refuse } from '../../../calculations/cutting/setting.js';
import { InputError } from '../../../diagnostics/errors.js';
import { spacesRound } from '../../../geometry/cutting/indexing.js';
import { listInWords } from '../../../units/words.js';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { wave } from '../../drafting/break-line.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { cutGiven } from './given.js';
import { outlineWithin } from './simulated-sector.js';
import { type Uneven, unevenCuts, unevenGiven } from './uneven.js';

/** What a view shows, and what is written over it; nothing over teeth that are like all others. */
const PLACES = {
  any: '',
  within: '',
  radius: 'to the axis',
  closing: 'closing tooth',
  slip: 'the slip',
  first: 'first cut',
  quarter: 'a quarter on',
  opposite: 'half way',
} as const;
type Place = keyof typeof PLACES;
const placeNames = Object.keys(PLACES) as [Place, ...Place[]];

const listed = (value: unknown): unknown =>
  typeof value === 'string' ? value.split(',').map((one) => one.trim()) : value;

/** On paper an outline may stand off its points so far, mm. */
const FINE = 0.02;
/** A pitch on the paper, mm, and pitches shown to either hand of the middle, in the order they are tried. */
const PITCH = 12;
const REACH = [2.4, 1.9, 1.4, 1.05] as const;

/** Parts of a rim as it was cut, over the right teeth in dashes. */
export const cutBesideRight = defineFigure({
  name: 'cut-beside-right',
  title: 'Teeth as they were cut, over the right ones',
  given: z.strictObject({
    ...cutGiven,
    ...unevenGiven,
    /** Of the blank that is right. */
    rightDiameter: length(1, 2000).optional(),
    show: z
      .preprocess(listed, z.array(z.enum(placeNames)).min(1).max(2))
      .describe(`one or two of ${placeNames.join(', ')}`),
  }),
  draw({ show, rightDiameter, uneven, unevenArcSeconds, ratio, every, ...given }, style) {
    refuse(given);
    if (show.includes('slip') && given.slipAt === undefined)
      throw new InputError('show', 'slip', 'a wheel with a slip in it');
    if (Math.abs(unevenArcSeconds) > 500_000 / given.teeth)
      throw new InputError('unevenArcSeconds', unevenArcSeconds, 'less than two fifths of a tooth’s pitch');
    const aside: Uneven = { uneven, unevenArcSeconds, ratio, every };
    const wrong = cut(given, unevenCuts(jobFor(given).cuts, aside));
    const right = cut(rightFor(given, rightDiameter));
    const places = show.map((name) => ({ name, at: placeOf(name, given) }));
    const label =
      `Teeth of a wheel of ${given.teeth} teeth, module ${plain(given.module)}, as they were cut, over the right ones ` +
      `in dashes: ${listInWords(places.map(({ name }) => PLACES[name] || 'anywhere'))}.`;
    const scales = scalesNear(Math.PI * given.module, PITCH);
    const ways = scales.flatMap((scale) => REACH.map((reach) => ({ reach, scale })));
    return firstThatFits(ways, style, ({ reach, scale }) => {
      const pen = new Pen(style);
      for (const { name, at } of places) drawView(pen, { wrong, right, given, at, name }, reach, scale);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The wheel that was wanted. */
const rightFor = (g: Given, rightDiameter: number | undefined): Given => ({
  teeth: g.teeth,
  leaves: g.leaves,
  module: g.module,
  stepErrorArcSeconds: 0,
  slipPutBack: 'no',
  offset: 0,
  depthError: 0,
  eccentricity: 0,
  depthForm: g.depthForm,
  blankDiameter: rightDiameter,
});

/** Degrees anticlockwise from the first cut to the middle of what is shown, and of the tooth that is meant. */
function placeOf(name: Place, g: Given): number {
  const { cuts } = jobFor(g);
  const pitch = 360 / g.teeth;
  if (name === 'quarter') return Math.round(g.teeth / 4) * pitch - pitch / 2;
  if (name === 'opposite') return 180;
  // Away from where the count closes.
  if (name === 'within') return Math.round(g.teeth / 2) * pitch;
  if (name === 'slip') {
    const at = g.slipAt ?? 1;
    return ((cuts[at - 1] ?? 0) + (cuts[at] ?? 0)) / 2;
  }
  if (name !== 'closing') return 0;
  const last = spacesRound(cuts, g.teeth).at(-1) ?? 0;
  return (last + 360) / 2;
}

interface View {
  readonly wrong: CutWheel;
  readonly right: CutWheel;
  readonly given: Given;
  readonly at: number;
  readonly name: Place;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A view to the right of what is drawn already, its middle at the top of the wheel. */
function drawView(pen: Pen, { wrong, right, given, at, name }: View, reach: number, scale: number): void {
  const size = pen.style.labelSize;
  const half = (reach * 360) / given.teeth;
  const sector = { from: at - half, to: at + half, middle: at };
  const radius = (given.module * given.teeth * scale) / 2;
  const across = radius * Math.sin(radians(half));
  const begun = pen.marks.ink.length > 0;
  const axis = point(begun ? pen.extent.right + size + across : 0, radius);
  const place = (r: number, angle: number): Point => onBearing(r * scale, -radians(angle - at), axis);
  const cutRun = outlineWithin(wrong, sector, FINE / scale).map(({ angle, radius: r }) => place(r, angle));
  const rightRun = outlineWithin(right, sector, FINE / scale).map(({ angle, radius: r }) => place(r, angle));
  const [first, last] = [cutRun[0], cutRun.at(-1)];
  if (!first || !last) return;
  pen.stroke('hidden', (trace) => trace.through(rightRun));
  pen.stroke('outline', (trace) => trace.through(cutRun));
  const body = wrong.measured.rootRadius - Math.max(4, size) / scale;
  const [left, far] = [place(body, sector.to), place(body, sector.from)];
  pen.stroke('fine', (trace) => wave(trace.moveTo(last), last, left));
  pen.stroke('fine', (trace) => wave(trace.moveTo(left), left, far));
  pen.stroke('fine', (trace) => wave(trace.moveTo(far), far, first));
  nameView(pen, name, point(axis.x, Math.min(...[...cutRun, ...rightRun].map(({ y }) => y))), left.y);
}

/** What is shown, over the middle of a view: an arrow to it, or the line that it should lie along. */
function nameView(pen: Pen, name: Place, top: Point, foot: number): void {
  if (PLACES[name] === '') return;
  const tip = point(top.x, top.y - 0.8);
  const tail = point(top.x, tip.y - (name === 'radius' ? 1.5 : 1.6 * arrowLength(pen)));
  if (name === 'radius') pen.line('centre', point(top.x, foot + 2), tail);
  else {
    pen.line('dimension', tail, tip);
    arrowhead(pen, tip, tail);
  }
  pen.text(PLACES[name], point(top.x, tail.y - 0.3 * pen.style.labelSize), { sit: 'above' });
}
