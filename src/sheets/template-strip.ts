import { arrow } from '../figures/drafting/arrow.js';
import type { Extent } from '../figures/drafting/marks.js';
import { type Point, point } from '../figures/drafting/point.js';
import { wrapped } from '../figures/drafting/wrap.js';
import type { Pen } from '../figures/pen.js';
import type { CheckBar } from '../reference/templates/check-bar.js';
import { drawKey, keySize, type Tile, type Tiling } from './template-tiles.js';

/** Ticks of the bars, mm. */
const LONG = 4;
const SHORT = 2.2;
/** Narrower than this, in sizes of the lettering, a sentence is broken too often to be read. */
const SENTENCE = 15;

const MEASURED = ['measured across', 'measured down'] as const;

/** What stands under a drawing: the bars by which it is trusted, and what it is. */
export interface Strip {
  readonly bar: CheckBar;
  /** The scale of the drawing, and what is to be minded, a sentence each. */
  readonly sentences: readonly string[];
  readonly tiling?: { readonly all: Tiling; readonly own: Tile } | undefined;
}

/** Width of the column at the left in which the upright bar stands. */
export const columnWidth = (pen: Pen): number =>
  LONG + 0.4 * pen.style.labelSize + pen.textSize('0').height + 3;

/** Draws the upright bar from the top of the page down. */
export function drawUprightBar(pen: Pen, bar: CheckBar): void {
  const x = columnWidth(pen) - 3;
  const gap = 0.4 * pen.style.labelSize;
  pen.line('outline', point(x, 0), point(x, bar.length));
  for (const at of ticksOf(bar)) {
    const end = at === 0 || at === bar.length;
    pen.line(end ? 'outline' : 'fine', point(x, at), point(x - (end ? LONG : SHORT), at));
  }
  pen.text(said(bar), point(x - LONG - gap, bar.length / 2), { turn: -90, sit: 'above' });
}

/** Draws the strip from a height on; `left` is where the level bar begins, `width` how far the page reaches. */
export function drawStrip(pen: Pen, { bar, sentences, tiling }: Strip, from: Point, width: number): void {
  const size = pen.style.labelSize;
  const { x: left, y: top } = from;
  const level = drawLevelBar(pen, bar, from);
  const upEnd = drawUp(pen, point(left + bar.length + 2.2 * size + 3, top));
  const aside = upEnd + 1.6 * size;
  // The key and the sentences stand beside the bar where the page is wide enough: there they take no height.
  const key = tiling && keySize(pen, tiling.all);
  const keyBeside = key !== undefined && aside + key.width <= width - 2;
  const beside = { x: aside, width: width - aside - 2 };
  const under = key !== undefined || beside.width < SENTENCE * size;
  const boxes = drawBoxes(pen, bar, point(left, level + 1.2 * size), {
    stacked: key !== undefined && !keyBeside,
    right: under && !keyBeside ? width - 2 : aside - size,
  });
  let below = boxes.bottom;
  if (tiling) {
    const at = keyBeside ? point(aside, top) : point(boxes.right + 2 * size, boxes.top);
    below = Math.max(below, drawKey(pen, tiling.all, tiling.own, at).bottom);
  }
  const place = under ? { x: left, width: width - left - 2 } : beside;
  let y = under ? below + 0.8 * size : top;
  for (const words of under ? [sentences.join(' ')] : sentences) {
    const lines = wrapped(pen, words, place.width);
    y = pen.text(lines, point(place.x, y), { anchor: 'start', sit: 'below' }).bottom + 0.35 * size;
  }
}

/** Draws the level bar under its figures. Gives back its height on the page. */
function drawLevelBar(pen: Pen, bar: CheckBar, { x: left, y: top }: Point): number {
  const gap = 0.4 * pen.style.labelSize;
  const level = top + pen.textSize('0').height + gap + LONG;
  pen.line('outline', point(left, level), point(left + bar.length, level));
  for (const at of ticksOf(bar)) {
    const end = at === 0 || at === bar.length;
    pen.line(
      end ? 'outline' : 'fine',
      point(left + at, level),
      point(left + at, level - (end ? LONG : SHORT)),
    );
  }
  pen.text('0', point(left, level - LONG - gap), { sit: 'above' });
  pen.text(said(bar), point(left + bar.length, level - LONG - gap), { anchor: 'end', sit: 'above' });
  return level;
}

const ticksOf = ({ length, tick }: CheckBar): number[] => {
  const count = Math.round(length / tick);
  return Array.from({ length: count + 1 }, (_, at) => (at === count ? length : at * tick));
};

const said = ({ words, unit }: CheckBar): string => `${words}\u2009${unit}`;

/** Which way up the page is. Gives back how far it reaches to the right. */
function drawUp(pen: Pen, { x, y }: Point): number {
  const size = pen.style.labelSize;
  const height = Math.max(9, 2 * size);
  arrow(pen, point(x, y + height), point(x, y));
  return pen.text('up', point(x + 0.6 * size, y + height / 2), { anchor: 'start' }).right;
}

/** Boxes for what both bars measure, side by side where they have room to a right edge. Gives back their room. */
function drawBoxes(
  pen: Pen,
  { unit }: CheckBar,
  { x, y }: Point,
  how: { readonly stacked: boolean; readonly right: number },
): Extent {
  const size = pen.style.labelSize;
  const height = Math.max(7, 1.7 * size);
  const box = 3.2 * size + 8;
  const gap = 1.5 * size;
  const lead = (name: string): number => pen.textSize(name).width + 0.6 * size;
  const widthOf = (name: string): number => lead(name) + box + 0.5 * size + pen.textSize(unit).width;
  const [first = 0, second = 0] = MEASURED.map(widthOf);
  const abreast = !how.stacked && x + first + gap + second <= how.right;
  const inset = Math.max(...MEASURED.map(lead));
  for (const [at, name] of MEASURED.entries()) {
    const left = abreast ? x + at * (first + gap) : x;
    const top = abreast ? y : y + at * (height + 0.5 * size);
    const start = left + (abreast ? lead(name) : inset);
    pen.text(name, point(left, top + height / 2), { anchor: 'start' });
    pen.rectangle('fine', { left: start, right: start + box, top, bottom: top + height });
    pen.text(unit, point(start + box + 0.5 * size, top + height / 2), { anchor: 'start' });
  }
  return {
    left: x,
    top: y,
    right: x + (abreast ? first + gap + second : Math.max(first, second)),
    bottom: y + (abreast ? height : 2 * height + 0.5 * size),
  };
}
