import { z } from 'zod';
import { isArc, type Path, turnedPath } from '../../../geometry/curves/path.js';
import { windowsOf } from '../../../geometry/finishing/crossing.js';
import { textBeyond } from '../../drafting/aligned.js';
import { arrow, arrowhead, arrowLength } from '../../drafting/arrow.js';
import { isClear, isFree } from '../../drafting/clear.js';
import { legend } from '../../drafting/legend.js';
import type { Extent } from '../../drafting/marks.js';
import { traceOutline } from '../../drafting/outline.js';
import { along, distance, onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';
import { type CrossingGiven, crossingOf, crossingShape, isOpen, OPEN } from './given.js';

const CENTRE = point(0, 0);

/** One window between its two arms, with what it is set out by. */
export const crossingWindow = defineFigure({
  name: 'crossing-window',
  title: 'One window and its arms',
  given: z.strictObject(crossingShape).refine(isOpen, OPEN),
  draw(given, style) {
    const mm = (value: number): string => inWords(value, style);
    const chord = given.rimInsideDiameter * Math.sin(Math.PI / given.arms);
    const label =
      `One window of a wheel of ${given.arms} arms, between a rim of ${mm(given.rimInsideDiameter)} inside and a hub of ` +
      `${mm(given.hubDiameter)}: arms ${mm(given.armWidthAtRim)} wide at the rim and ${mm(given.armWidthAtHub)} at the hub, ` +
      `${mm(chord)} from arm to arm, corners of ${mm(given.filletRadius)} radius.`;
    return firstThatFits(scalesNear(given.rimInsideDiameter / 2, 58), style, (scale) => {
      const pen = new Pen(style);
      drawWindow(pen, given, scale);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'N', meaning: 'arms', value: String(given.arms) },
        { letter: 'D', meaning: 'rim, inside', value: mm(given.rimInsideDiameter) },
        { letter: 'd', meaning: 'hub', value: mm(given.hubDiameter) },
        { letter: 'w_r', meaning: 'arm at the rim', value: mm(given.armWidthAtRim) },
        { letter: 'w_h', meaning: 'arm at the hub', value: mm(given.armWidthAtHub) },
        { letter: 'c', meaning: 'chord from arm to arm', value: mm(chord) },
        ...(given.filletRadius > 0
          ? [{ letter: 'r', meaning: 'radius in the corners', value: mm(given.filletRadius) }]
          : []),
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The wheel's axis stands at the origin, the window's middle line upright above it. */
function drawWindow(pen: Pen, given: CrossingGiven, scale: number): void {
  const size = pen.style.labelSize;
  const result = windowsOf(crossingOf(given));
  const first = 'windows' in result ? result.windows[0] : undefined;
  if (!first) return;
  const half = Math.PI / given.arms;
  const window = turnedPath(first, Math.PI / 2 - half);
  const [rim, hub] = [(given.rimInsideDiameter / 2) * scale, (given.hubDiameter / 2) * scale];
  const [atRim, atHub] = [
    Math.asin(given.armWidthAtRim / given.rimInsideDiameter),
    Math.asin(given.armWidthAtHub / given.hubDiameter),
  ];
  pen.stroke('outline', (trace) => traceOutline(trace, window, CENTRE, scale).close());
  for (const side of [-1, 1]) {
    // The far side of each arm.
    const [foot, head] = [onBearing(hub, side * (half + atHub)), onBearing(rim, side * (half + atRim))];
    pen.line('fine', foot, head);
    pen.line('centre', CENTRE, onBearing(rim + 4, side * half));
  }
  // The rim and the hub a little way on, to be named there.
  const [onRim, onHub] = [half + atRim, half + atHub];
  pen.stroke('fine', (trace) => trace.arc(CENTRE, rim, -onRim, -onRim - 5 / rim));
  pen.stroke('fine', (trace) => trace.arc(CENTRE, hub, onHub, onHub + 5 / hub));
  pen.line('centre', point(0, 3), point(0, -hub + 2));

  const [left, right] = [onBearing(rim, -half), onBearing(rim, half)];
  pen.line('dimension', left, right);
  arrowhead(pen, left, right);
  arrowhead(pen, right, left);
  if (given.filletRadius > 0) nameFillet(pen, window, scale);
  const places = [0.5, 0.6, 0.7, 0.4].map((share) => along(left, right, share));
  textBeyond(pen, 'c', places, [point(0, -1), point(0, 1)], 0.3 * size);
  across(pen, onBearing(rim, half - atRim), onBearing(rim, half + atRim), 'w_r');
  across(pen, onBearing(hub, -half + atHub), onBearing(hub, -half - atHub), 'w_h');
  circleName(pen, 'D', onBearing(rim, -onRim - 4 / rim));
  circleName(pen, 'd', onBearing(hub, onHub + 4 / hub));
}

/** A width from place to place, arrowheads from without, its letter beyond the second. */
function across(pen: Pen, a: Point, b: Point, letter: string): void {
  const out = arrowLength(pen) * 1.7;
  const length = distance(a, b);
  const [before, after] = [along(a, b, -out / length), along(a, b, 1 + out / length)];
  pen.line('dimension', before, after);
  arrowhead(pen, a, before);
  arrowhead(pen, b, after);
  const way = point((b.x - a.x) / length, (b.y - a.y) / length);
  textBeyond(pen, letter, after, way, 0.3 * pen.style.labelSize);
}

/** An arrow to a circle about the centre from outside, with its letter. */
function circleName(pen: Pen, letter: string, at: Point): void {
  const size = pen.style.labelSize;
  const radius = Math.hypot(at.x, at.y);
  const way = point(at.x / radius, at.y / radius);
  const tail = point(at.x + way.x * (2.2 * arrowLength(pen)), at.y + way.y * (2.2 * arrowLength(pen)));
  arrow(pen, tail, at);
  textBeyond(pen, letter, tail, way, 0.3 * size);
}

/** The radius of a round: by an arrow from within the window, or from the metal, where its letter has room. */
function nameFillet(pen: Pen, window: Path, scale: number): void {
  const size = pen.style.labelSize;
  const label = pen.textSize('r');
  const lengths = [1, 1.5, 2, 2.6, 3.4].map((times) => times * 2.4 * arrowLength(pen));
  // At the left of the rim and at the right of the hub; see how a window runs.
  const rounds = [1, 5].flatMap((place) => roundOf(window, place, scale));
  const ways = [
    ...rounds.flatMap(({ tip, inward, radius }) =>
      lengths.map((length) => ({ tip, way: inward, length: Math.max(radius, length) })),
    ),
    ...rounds.flatMap(({ tip, inward }) =>
      lengths.map((length) => ({ tip, way: point(-inward.x, -inward.y), length })),
    ),
  ].map(({ tip, way, length }) => {
    const tail = point(tip.x + way.x * length, tip.y + way.y * length);
    return { tip, tail, middle: middleBeyond(label, tail, way, 0.4 * size) };
  });
  const best = ways.find(({ middle }) => isFree(pen, roomAbout(middle, label))) ?? ways[0];
  if (!best) return;
  arrow(pen, best.tail, best.tip);
  pen.text('r', best.middle);
}

/** The middle of a round of the window, on the paper, and the way from it into the window. */
function roundOf(window: Path, place: number, scale: number) {
  const [from, round] = [window.segments[place - 1], window.segments[place]];
  if (!from || !round || !isArc(round)) return [];
  const onPaper = ({ x, y }: { x: number; y: number }): Point => point(x * scale, -y * scale);
  const [centre, middle] = [onPaper(round.centre), along(onPaper(from.to), onPaper(round.to), 0.5)];
  const radius = distance(centre, onPaper(from.to));
  const reach = distance(centre, middle);
  const inward = point((centre.x - middle.x) / reach, (centre.y - middle.y) / reach);
  return [{ tip: point(centre.x - inward.x * radius, centre.y - inward.y * radius), inward, radius }];
}

const middleBeyond = (label: Size, at: Point, way: Point, white: number): Point => {
  const reach = white + (label.width / 2) * Math.abs(way.x) + (label.height / 2) * Math.abs(way.y);
  return point(at.x + way.x * reach, at.y + way.y * reach);
};

const roomAbout = ({ x, y }: Point, { width, height }: Size): Extent => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});

interface Size {
  readonly width: number;
  readonly height: number;
}
