import { z } from 'zod';
import { flattened, isArc, type Path, turnedPath } from '../../../geometry/curves/path.js';
import { windowsOf } from '../../../geometry/finishing/crossing.js';
import { hatch } from '../../drafting/hatch.js';
import { type Note, notesAt } from '../../drafting/leader.js';
import { traceOutline } from '../../drafting/outline.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { type CrossingGiven, crossingOf, crossingShape, isOpen, OPEN } from '../finishing/given.js';
import { centreMark, pointer } from './marks.js';

const CENTRE = point(0, 0);
/** How far the middle lines stand out beyond the wheel, mm. */
const PAST = 4;
/** The hole that the blade is threaded through: its radius, and how far its middle keeps from the lines, mm. */
const START = { radius: 0.75, off: 1.6 };

interface Given extends CrossingGiven {
  readonly outsideDiameter: number;
  readonly rootDiameter?: number | undefined;
  readonly hole?: number | undefined;
}

/** A wheel to be crossed out, true to scale: the paper is glued on and sawn through. */
export const crossingTemplate = defineFigure({
  name: 'crossing-template',
  title: 'A template to cross a wheel out by',
  given: z
    .strictObject({
      ...crossingShape,
      outsideDiameter: length(4, 600),
      rootDiameter: length(4, 600).optional(),
      hole: length(0.1, 300).optional(),
      sizes: word('yes', 'no').default('yes'),
    })
    .refine(isOpen, OPEN)
    .refine((g) => g.outsideDiameter > g.rimInsideDiameter, {
      path: ['outsideDiameter'],
      message: 'more than the inside diameter of the rim',
    })
    .refine(
      ({ rootDiameter: root = 0, rimInsideDiameter: rim, outsideDiameter: tips }) =>
        root === 0 || (root > rim && root < tips),
      {
        path: ['rootDiameter'],
        message: 'between the rim’s inside and the tips',
      },
    )
    .refine((g) => (g.hole ?? 0) < g.hubDiameter, { path: ['hole'], message: 'less than the hub' }),
  draw(given, style) {
    const mm = (value: number): string => inWords(value, style);
    const pen = new Pen(style);
    const windows = windowsFor(given);
    drawTemplate(pen, given, windows);
    if (given.sizes === 'yes') {
      const column = given.outsideDiameter / 2 + Math.max(PAST + 2, 2 * style.labelSize);
      notesAt(pen, -column, circlesOf(given, mm), 'left');
      notesAt(pen, column, armsOf(given, windows, mm));
    }
    const label =
      `Template at true scale for a wheel of ${mm(given.outsideDiameter)}, to be crossed out to ${given.arms} arms ` +
      `between a rim of ${mm(given.rimInsideDiameter)} inside and a hub of ${mm(given.hubDiameter)}; the waste is hatched.`;
    return fitting(style, pen.finish(label, 'true scale'));
  },
});

/** The windows with the first arm upright, and where the blade is let into each. */
function windowsFor(given: CrossingGiven) {
  const upright = (result: ReturnType<typeof windowsOf>): Path[] =>
    'windows' in result ? result.windows.map((window) => turnedPath(window, Math.PI / 2)) : [];
  const crossing = crossingOf(given);
  // A round so large would just touch rim and arm: its middle is the place for the hole.
  const rounds = upright(
    windowsOf({ ...crossing, filletRadius: Math.max(START.off, crossing.filletRadius) }),
  );
  const starts = rounds.flatMap(({ segments: [, round] }) =>
    round && isArc(round) ? [point(round.centre.x, -round.centre.y)] : [],
  );
  return { windows: upright(windowsOf(crossing)), starts };
}

type Windows = ReturnType<typeof windowsFor>;

function drawTemplate(pen: Pen, given: Given, { windows, starts }: Windows): void {
  const { arms, outsideDiameter, rootDiameter, hole } = given;
  for (const window of windows) {
    hatch(pen, [flattened(window, 0.01).map(({ x, y }) => point(x, -y))], { spacing: 2.4 });
    pen.stroke('outline', (trace) => traceOutline(trace, window, CENTRE, 1).close());
  }
  for (const start of starts) {
    pen.circle('fine', start, START.radius, 'paper');
    pen.circle('fine', start, 0.15, 'ink');
  }
  const outer = outsideDiameter / 2;
  pen.circle('outline', CENTRE, outer);
  if (rootDiameter !== undefined) pen.circle('fine', CENTRE, rootDiameter / 2);
  if (hole !== undefined) pen.circle('outline', CENTRE, hole / 2);
  const past = outer + PAST;
  pen.line('centre', point(-past, 0), point(past, 0));
  pen.line('centre', point(0, -past), point(0, past));
  for (let arm = 1; arm < arms; arm++) {
    const bearing = (2 * Math.PI * arm) / arms;
    if (Math.abs(Math.sin(2 * bearing)) > 1e-9) pen.line('centre', CENTRE, onBearing(past, bearing));
  }
  centreMark(pen, CENTRE, Math.min(2, outer / 4));
  pointer(pen, point(0, -past));
}

/** The circles of the wheel, told on its left from the top down. */
function circlesOf(given: Given, mm: (value: number) => string): Note[] {
  const { arms, outsideDiameter, rootDiameter, rimInsideDiameter, hubDiameter, hole } = given;
  const middle = -sideways(arms).middle;
  const note = (name: string, diameter: number, bearing: number): Note => ({
    text: [name, `Ø ${mm(diameter)}`],
    tip: onBearing(diameter / 2, bearing),
  });
  const notes = [
    note('tips', outsideDiameter, -0.35),
    ...(rootDiameter === undefined ? [] : [note('root', rootDiameter, -0.75)]),
    note('rim, inside', rimInsideDiameter, middle),
    note('hub', hubDiameter, middle),
    ...(hole === undefined ? [] : [note('hole', hole, -2.2)]),
  ];
  return notes.toSorted((a, b) => a.tip.y - b.tip.y);
}

/** The arms, told on the right from the top down. */
function armsOf(given: Given, { windows, starts }: Windows, mm: (value: number) => string): Note[] {
  const { arms, rimInsideDiameter, hubDiameter, armWidthAtRim, armWidthAtHub, filletRadius } = given;
  const lower = sideways(arms).middle + Math.PI / arms;
  const [rim, hub] = [rimInsideDiameter / 2, hubDiameter / 2];
  const side = (share: number): Point => {
    const radius = hub + share * (rim - hub);
    const width = armWidthAtHub + share * (armWidthAtRim - armWidthAtHub);
    return onBearing(radius, lower - Math.asin(Math.min(1, width / 2 / radius)));
  };
  const notes: Note[] = [
    { text: ['arm, at the hub', mm(armWidthAtHub)], tip: side(0.2) },
    { text: ['arm, at the rim', mm(armWidthAtRim)], tip: side(0.75) },
  ];
  if (filletRadius > 0)
    notes.push({ text: ['corners', `R ${mm(filletRadius)}`], tip: cornerOf(windows, filletRadius) });
  const start = starts.toSorted((a, b) => b.x - b.y - (a.x - a.y))[0];
  if (start) notes.push({ text: ['drill here', 'for the blade'], tip: start });
  return notes.toSorted((a, b) => a.tip.y - b.tip.y);
}

/** The window on the right whose middle line lies nearest to level: that line’s bearing. */
function sideways(arms: number): { readonly middle: number } {
  const step = (2 * Math.PI) / arms;
  return { middle: step * (Math.max(0, Math.round(Math.PI / 2 / step - 0.5)) + 0.5) };
}

/** The middle of the round at the rim that lies furthest to the right and low. */
function cornerOf(windows: readonly Path[], radius: number): Point {
  const rounds = windows.flatMap(({ segments }) =>
    [1, 7].flatMap((at) => {
      const round = segments[at];
      return round && isArc(round) ? [round.centre] : [];
    }),
  );
  const centre = rounds.toSorted((a, b) => b.x - 0.5 * b.y - (a.x - 0.5 * a.y))[0] ?? { x: 0, y: 0 };
  const away = Math.hypot(centre.x, centre.y);
  return point((centre.x * (away + radius)) / away, (-centre.y * (away + radius)) / away);
}
