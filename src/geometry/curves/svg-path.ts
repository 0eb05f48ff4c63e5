import { isArc, type Path, type Segment } from './path.js';
import { distance, type Point } from './point.js';

/**
 * A path as SVG path data, y turned down, arcs as arcs, each step from the last so that the text is short. Every
 * place is rounded for itself and steps are taken between rounded places: nothing adds up along the way. An arc that
 * rises from its chord by less than rounding is written as a line, and a radius with no more figures than its rise
 * needs.
 *
 * @param places decimals of a millimetre
 */
export function svgPath({ start, segments }: Path, places = 3): string {
  const unit = 10 ** places;
  const grid = ({ x, y }: Point) => ({ x: Math.round(x * unit), y: Math.round(-y * unit) });
  let here = grid(start);
  let from = start;
  let d = `M${numbers(here.x / unit, here.y / unit)}`;
  let letter = 'M';
  for (const segment of segments) {
    const to = grid(segment.to);
    const step = [to.x - here.x, to.y - here.y].map((one) => round(one / unit, places)) as [number, number];
    const radius = radiusOf(segment, from, places);
    const sweeps = isArc(segment) && segment.turn < 0 ? 1 : 0;
    const large = isArc(segment) && Math.abs(segment.turn) > Math.PI ? 1 : 0;
    const [next, text] =
      radius === undefined
        ? ['l', numbers(...step)]
        : ['a', `${numbers(radius, radius)} 0 ${large} ${sweeps}${after(numbers(...step))}`];
    // A letter that repeats is left out.
    d += next === letter ? after(text) : `${next}${text}`;
    [letter, here, from] = [next, to, segment.to];
  }
  return isClosed(start, segments.at(-1)?.to) ? `${d}Z` : d;
}

/** The radius of an arc, as short as its rise allows; none for a line, or an arc as flat as one. */
function radiusOf(segment: Segment, from: Point, places: number): number | undefined {
  if (!isArc(segment)) return undefined;
  const radius = distance(segment.to, segment.centre);
  const half = distance(from, segment.to) / 2;
  const least = 10 ** -places / 2;
  const rise = (r: number): number => r - Math.sqrt(Math.max(0, r * r - half * half));
  const lesser = Math.abs(segment.turn) < Math.PI / 2;
  if (lesser && rise(radius) < least) return undefined;
  for (let figures = 1; lesser && figures < 7; figures++) {
    const shorter = Number(radius.toPrecision(figures));
    if (shorter > half && Math.abs(rise(shorter) - rise(radius)) < least / 2) return shorter;
  }
  return round(radius, places);
}

const isClosed = (start: Point, end: Point | undefined): boolean =>
  end !== undefined && distance(start, end) < 1e-6;

const round = (value: number, places: number): number => Number(value.toFixed(places)) + 0;

/** A number without the nought before its point. */
const short = (value: number): string => String(value).replace(/^(-?)0\./, '$1.');

/** What follows a number needs a space, unless it brings its own minus sign. */
const after = (text: string): string => (text.startsWith('-') ? text : ` ${text}`);

/** Two numbers; a second point parts them as well as a space does. */
function numbers(a: number, b: number): string {
  const [first, second] = [short(a), short(b)];
  return first.includes('.') && second.startsWith('.') ? first + second : first + after(second);
}
