import { isArc, type Path } from './path.js';
import { distance, type Point } from './point.js';

/**
 * A path as SVG path data, y turned down, arcs as arcs, each step from the last so that the text is short. Every
 * place is rounded for itself and steps are taken between rounded places: nothing adds up along the way.
 *
 * @param places decimals of a millimetre
 */
export function svgPath({ start, segments }: Path, places = 3): string {
  const unit = 10 ** places;
  const grid = ({ x, y }: Point) => ({ x: Math.round(x * unit), y: Math.round(-y * unit) });
  let here = grid(start);
  let d = `M${pair(here.x / unit, here.y / unit)}`;
  for (const segment of segments) {
    const to = grid(segment.to);
    const step = pair(round((to.x - here.x) / unit, places), round((to.y - here.y) / unit, places));
    here = to;
    if (isArc(segment)) {
      const radius = round(distance(segment.to, segment.centre), places);
      const large = Math.abs(segment.turn) > Math.PI ? 1 : 0;
      d += `a${pair(radius, radius)} 0 ${large} ${segment.turn < 0 ? 1 : 0}${joinedTo(step)}`;
    } else d += `l${step}`;
  }
  return `${d}Z`.replace(/Z$/, isClosed(start, segments.at(-1)?.to) ? 'Z' : '');
}

const isClosed = (start: Point, end: Point | undefined): boolean =>
  end !== undefined && distance(start, end) < 1e-6;

const round = (value: number, places: number): number => Number(value.toFixed(places)) + 0;

/** A number without the nought before its point. */
const short = (value: number): string => String(value).replace(/^(-?)0\./, '$1.');

const joinedTo = (text: string): string => (text.startsWith('-') ? text : ` ${text}`);

const pair = (a: number, b: number): string => `${short(a)}${joinedTo(short(b))}`;
