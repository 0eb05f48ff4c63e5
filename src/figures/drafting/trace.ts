import { decimal as n } from './number.js';
import { bearingToAngle, distance, type Point } from './point.js';

/** How far a chord may stray from its arc where a drawing is checked, mm. Printed arcs stay arcs. */
const FLATNESS = 0.01;

/** What a pen does between setting down and lifting: moves, lines and arcs, kept as SVG path and as points. */
export class Trace {
  readonly #steps: string[] = [];
  readonly #runs: Point[][] = [];

  moveTo(to: Point): this {
    this.#steps.push(`M${n(to.x)} ${n(to.y)}`);
    this.#runs.push([to]);
    return this;
  }

  lineTo(to: Point): this {
    this.#steps.push(`L${n(to.x)} ${n(to.y)}`);
    this.#run.push(to);
    return this;
  }

  /** Sets down at the first place and draws straight through the others. */
  through(places: readonly Point[]): this {
    for (const [i, place] of places.entries()) {
      if (i === 0) this.moveTo(place);
      else this.lineTo(place);
    }
    return this;
  }

  /** An arc about a centre between two bearings, clockwise when the second is larger; less than a full turn. */
  arc(centre: Point, radius: number, from: number, to: number): this {
    const places = sweep(centre, radius, bearingToAngle(from), bearingToAngle(to));
    const start = places[0] as Point;
    const end = places.at(-1) as Point;
    if (this.#runs.length === 0) this.moveTo(start);
    else if (distance(this.#here, start) > 1e-9) this.lineTo(start);
    const large = Math.abs(to - from) > Math.PI ? 1 : 0;
    this.#steps.push(`A${n(radius)} ${n(radius)} 0 ${large} ${to > from ? 1 : 0} ${n(end.x)} ${n(end.y)}`);
    this.#run.push(...places.slice(1));
    return this;
  }

  /** The lesser arc of a radius from here to a place. The radius must be at least half the distance. */
  bend(to: Point, radius: number, sense: 'clockwise' | 'anticlockwise'): this {
    const from = this.#here;
    const chord = distance(from, to);
    const turn = sense === 'clockwise' ? 1 : -1;
    const rise = (turn * Math.sqrt(Math.max(0, radius ** 2 - chord ** 2 / 4))) / chord;
    const centre = {
      x: (from.x + to.x) / 2 - (to.y - from.y) * rise,
      y: (from.y + to.y) / 2 + (to.x - from.x) * rise,
    };
    const start = Math.atan2(from.y - centre.y, from.x - centre.x);
    const angle = turn * 2 * Math.asin(Math.min(1, chord / 2 / radius));
    this.#steps.push(`A${n(radius)} ${n(radius)} 0 0 ${turn > 0 ? 1 : 0} ${n(to.x)} ${n(to.y)}`);
    this.#run.push(...sweep(centre, radius, start, start + angle).slice(1, -1), to);
    return this;
  }

  close(): this {
    const start = this.#run[0];
    if (start === undefined) return this;
    this.#steps.push('Z');
    this.#run.push(start);
    return this;
  }

  /** The SVG path. */
  get d(): string {
    return this.#steps.join('');
  }

  /** The same as points, one list for each time the pen was set down; arcs as short chords. */
  get runs(): readonly (readonly Point[])[] {
    return this.#runs;
  }

  get #run(): Point[] {
    const run = this.#runs.at(-1);
    if (run === undefined) throw new Error('the pen must be set down with moveTo before it draws');
    return run;
  }

  get #here(): Point {
    return this.#run.at(-1) as Point;
  }
}

/** Points along an arc, ends included; angles as SVG counts them. */
export function sweep(centre: Point, radius: number, from: number, to: number): Point[] {
  const step = 2 * Math.acos(Math.max(0.5, 1 - FLATNESS / radius));
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / step));
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / count;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}
