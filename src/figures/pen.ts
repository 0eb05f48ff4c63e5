import { shareWithin } from './drafting/clear.js';
import { labelWidth, REACH, type Weight } from './drafting/label.js';
import { type Extent, extentOf, type Ink, type LabelBox, type Marks } from './drafting/marks.js';
import { along, type Point } from './drafting/point.js';
import { fittedDash, type StrokeKind, strokes } from './drafting/strokes.js';
import {
  circleElement,
  pathElement,
  placed,
  roundElements,
  svgElement,
  textElement,
} from './drafting/svg.js';
import { sweep, Trace } from './drafting/trace.js';
import type { Drawing, FigureStyle } from './figure.js';

/** White between the outermost ink and the edge of a figure, mm. */
const MARGIN = 0.5;

/** Where a label stands against its place, and how. */
export interface LabelOptions {
  /** Which part of each line is at the place; default `middle`. */
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Whether the lines stand above the place, astride it or below it; default `astride`. */
  readonly sit?: 'above' | 'astride' | 'below';
  readonly weight?: Weight;
  /** Size against the style's label size; default 1. */
  readonly size?: number;
  /** Degrees clockwise about the place; default 0. */
  readonly turn?: number;
}

/** Draws in millimetres, x right and y down, and remembers where the ink lies. Rounds only as it writes. */
export class Pen {
  readonly #elements: string[] = [];
  readonly #ink: Ink[] = [];
  readonly #labels: LabelBox[] = [];

  constructor(readonly style: FigureStyle) {}

  /** Whatever the trace does, in one stroke. Filled with paper it hides what was drawn before; with ink it is solid. */
  stroke(kind: StrokeKind, draw: (trace: Trace) => void, fill?: 'paper' | 'ink'): void {
    const trace = new Trace();
    draw(trace);
    const [run] = trace.runs;
    const dash =
      run && trace.runs.length === 1 ? fittedDash(kind, lengthOf(run), isClosed(run)) : strokes[kind].dash;
    this.#elements.push(pathElement(trace.d, strokes[kind].width, dash, fill));
    for (const points of trace.runs) this.#ink.push({ width: strokes[kind].width, points });
  }

  /** Whatever the trace does, so many times round a place, equally spaced; written once however often it stands. */
  strokeRound(kind: StrokeKind, about: Point, count: number, draw: (trace: Trace) => void): void {
    const trace = new Trace();
    draw(trace);
    const { width } = strokes[kind];
    this.#elements.push(...roundElements(trace.d, width, about, count));
    for (const points of trace.runs)
      for (let i = 0; i < count; i++)
        this.#ink.push({ width, points: turned(points, about, (360 * i) / count) });
  }

  /** Straight lines from place to place. */
  line(kind: StrokeKind, ...places: readonly Point[]): void {
    this.stroke(kind, (trace) => trace.through(places));
  }

  polygon(kind: StrokeKind, corners: readonly Point[], fill?: 'paper' | 'ink'): void {
    this.stroke(
      kind,
      (trace) => {
        trace.through(corners).close();
      },
      fill,
    );
  }

  rectangle(kind: StrokeKind, box: Extent, fill?: 'paper' | 'ink'): void {
    this.polygon(kind, cornersOf(box), fill);
  }

  /** A small solid shape with no edge of its own: an arrowhead. */
  solid(corners: readonly Point[]): void {
    const trace = new Trace().through(corners).close();
    this.#elements.push(pathElement(trace.d, 0, [], 'ink'));
    for (const points of trace.runs) this.#ink.push({ width: 0, points });
  }

  circle(kind: StrokeKind, centre: Point, radius: number, fill?: 'paper' | 'ink'): void {
    const { width } = strokes[kind];
    const dash = fittedDash(kind, 2 * Math.PI * radius, true);
    this.#elements.push(circleElement(centre, radius, width, dash, fill));
    this.#ink.push({ width, points: sweep(centre, radius, 0, 2 * Math.PI) });
  }

  /**
   * One or more lines of text. In a label `_` sets what follows low, as in `d_a`.
   *
   * @returns the room it takes (before any turn), so that a neighbour can keep clear
   */
  text(label: string | readonly string[], at: Point, options: LabelOptions = {}): Extent {
    const { anchor = 'middle', sit = 'astride', weight = 400, turn = 0 } = options;
    const lines = typeof label === 'string' ? [label] : label;
    const size = this.style.labelSize * (options.size ?? 1);
    const { width, height } = this.textSize(lines, options);
    const top = at.y - { above: height, astride: height / 2, below: 0 }[sit];
    const left = at.x - width * { start: 0, middle: 0.5, end: 1 }[anchor];
    lines.forEach((line, i) => {
      const base = top + (REACH.ascent + i * LINE) * size;
      this.#elements.push(textElement(line, { x: at.x, y: base }, { anchor, weight, size, turn, about: at }));
      const own = labelWidth(line, size, weight);
      const start = at.x - own * { start: 0, middle: 0.5, end: 1 }[anchor];
      const box = {
        left: start,
        right: start + own,
        top: base - REACH.ascent * size,
        bottom: base + REACH.descent * size,
      };
      this.#labels.push({ text: line, corners: turned(cornersOf(box), at, turn) });
    });
    return { left, right: left + width, top, bottom: top + height };
  }

  /** The room some lines of text take. */
  textSize(label: string | readonly string[], options: LabelOptions = {}): { width: number; height: number } {
    const lines = typeof label === 'string' ? [label] : label;
    const size = this.style.labelSize * (options.size ?? 1);
    return {
      width: Math.max(...lines.map((line) => labelWidth(line, size, options.weight ?? 400))),
      height: ((lines.length - 1) * LINE + REACH.ascent + REACH.descent) * size,
    };
  }

  get marks(): Marks {
    return { labels: this.#labels, ink: this.#ink };
  }

  get extent(): Extent {
    return extentOf(this.marks);
  }

  /**
   * Takes the paper off the board: the figure is as large as what is on it.
   *
   * @param printer what 1 mm comes out as on one printer, across and down: the whole is stretched to make up for it
   */
  finish(
    label: string,
    scale: string,
    printer: { readonly x: number; readonly y: number } = { x: 1, y: 1 },
  ): Drawing {
    const { left, top, right, bottom } = this.extent;
    const box = { left: left - MARGIN, top: top - MARGIN, right: right + MARGIN, bottom: bottom + MARGIN };
    return {
      svg: svgElement(box, label, this.#elements, printer),
      width: (box.right - box.left) / printer.x,
      height: (box.bottom - box.top) / printer.y,
      label,
      scale,
      marks: this.marks,
      content: { box, elements: this.#elements },
    };
  }

  /**
   * Sets a finished drawing into this one, its own origin at a place; with a window, only what lies within that is
   * seen.
   */
  place({ content, marks }: Drawing, at: Point, window?: Extent): void {
    this.#elements.push(...placed(content.elements, at, window));
    const moved = (p: Point): Point => ({ x: p.x + at.x, y: p.y + at.y });
    for (const { width, points } of marks.ink) {
      const run = points.map(moved);
      this.#ink.push(...(window ? seenThrough(window, run) : [run]).map((one) => ({ width, points: one })));
    }
    for (const { text, corners } of marks.labels) {
      const there = corners.map(moved);
      if (!window) this.#labels.push({ text, corners: there });
      else if (there.some((p) => isWithin(window, p)))
        this.#labels.push({ text, corners: there.map((p) => nearestWithin(window, p)) });
    }
  }
}

const isWithin = ({ left, right, top, bottom }: Extent, { x, y }: Point): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

const nearestWithin = ({ left, right, top, bottom }: Extent, { x, y }: Point): Point => ({
  x: Math.min(right, Math.max(left, x)),
  y: Math.min(bottom, Math.max(top, y)),
});

/** What a window shows of a run, stretch by stretch. */
function seenThrough(window: Extent, run: readonly Point[]): Point[][] {
  return run.slice(1).flatMap((to, i) => {
    const from = run[i] as Point;
    const share = shareWithin(window, from, to);
    return share ? [share.map((at) => along(from, to, at))] : [];
  });
}

/** From one line of a label to the next, in font sizes. */
const LINE = 1.2;

const cornersOf = ({ left, right, top, bottom }: Extent): Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

/** Places turned about another, degrees clockwise. */
function turned(places: readonly Point[], about: Point, degrees: number): Point[] {
  const cos = Math.cos((degrees * Math.PI) / 180);
  const sin = Math.sin((degrees * Math.PI) / 180);
  return places.map(({ x, y }) => ({
    x: about.x + (x - about.x) * cos - (y - about.y) * sin,
    y: about.y + (x - about.x) * sin + (y - about.y) * cos,
  }));
}

const lengthOf = (run: readonly Point[]): number =>
  run.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - (run[i]?.x ?? 0), p.y - (run[i]?.y ?? 0)), 0);

const isClosed = (run: readonly Point[]): boolean =>
  run.length > 2 && run[0]?.x === run.at(-1)?.x && run[0]?.y === run.at(-1)?.y;
