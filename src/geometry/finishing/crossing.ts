import { arcFrom, areaOf, type Path, type Segment, turnedPath } from '../curves/path.js';
import { type Point, polar } from '../curves/point.js';
import { type Arm, type ArmSide, angleOf, armSide } from './arm.js';
import { polarMomentOf } from './moment.js';

/** How a wheel is crossed out. */
export interface Crossing extends Arm {
  readonly arms: number;
  /** Radius of the round in each corner of a window, mm; 0 leaves the corners sharp. */
  readonly filletRadius: number;
}

/** Why there are no windows: what meets what. */
export type Closed = 'hub' | 'rim' | 'side' | 'fillets';

/** The windows, arm 1 along the x axis, window 1 after it, anticlockwise; or what closes them. */
export type Windows = { readonly windows: readonly Path[] } | { readonly closed: Closed };

/** Narrower than this a window is none, mm. */
export const NARROWEST = 0.001;

/** The windows of a wheel, true lines and arcs. Each arm's width is less than the diameter it is measured at. */
export function windowsOf(crossing: Crossing): Windows {
  const { arms, rimRadius, hubRadius, filletRadius: fillet } = crossing;
  const half = Math.PI / arms;
  const side = armSide(crossing);
  const open = (radius: number, angle: number): boolean => radius * (half - angle) >= NARROWEST;
  if (!open(hubRadius, angleOf(side.atHub))) return { closed: 'hub' };
  if (!open(rimRadius, angleOf(side.atRim))) return { closed: 'rim' };
  if (side.along.x * side.atHub.x + side.along.y * side.atHub.y <= 0) return { closed: 'side' };
  const atHub = corner(side, hubRadius, fillet);
  const atRim = corner(side, rimRadius, -fillet);
  if (!atHub || !atRim || atRim.along - atHub.along < NARROWEST) return { closed: 'fillets' };
  if (!open(hubRadius, angleOf(atHub.centre)) || !open(rimRadius, angleOf(atRim.centre)))
    return { closed: 'fillets' };
  const first = windowBetween(atHub, atRim, half, fillet);
  return { windows: Array.from({ length: arms }, (_, i) => turnedPath(first, 2 * half * i)) };
}

/** Area of some windows, mm², and their polar moment about the axis, mm⁴. */
export function removed(windows: readonly Path[]) {
  const sum = (of: (window: Path) => number): number =>
    windows.reduce((total, window) => total + of(window), 0);
  return { area: sum(areaOf), moment: sum(polarMomentOf) };
}

/** Where the round in a corner has its centre, and touches the circle and the arm's side. */
interface Corner {
  readonly centre: Point;
  readonly onCircle: Point;
  readonly onSide: Point;
  /** How far along the side, from where that passes nearest to the axis. */
  readonly along: number;
}

/**
 * The round between a side and a circle about the axis.
 *
 * @param outward radius of the round, above 0 where it lies outside the circle, below where inside
 * @returns nothing where so large a round touches no such circle
 */
function corner(side: ArmSide, radius: number, outward: number): Corner | undefined {
  const reach = radius + outward;
  const past = side.past + Math.abs(outward);
  if (reach <= 0 || past >= reach) return undefined;
  const along = Math.sqrt((reach - past) * (reach + past));
  const at = (over: number): Point => ({
    x: side.along.x * along + side.out.x * over,
    y: side.along.y * along + side.out.y * over,
  });
  const centre = at(past);
  const share = radius / reach;
  return {
    centre,
    onCircle: { x: centre.x * share, y: centre.y * share },
    onSide: at(side.past),
    along,
  };
}

/** The first window, anticlockwise from where the rim leaves the first arm's round. */
function windowBetween(atHub: Corner, atRim: Corner, half: number, fillet: number): Path {
  const across = (p: Point): Point => polar(Math.hypot(p.x, p.y), 2 * half - angleOf(p));
  const axis = { x: 0, y: 0 };
  const round = (from: Point, centre: Point, to: Point): Segment[] =>
    fillet === 0 ? [] : [{ to, centre, turn: turnBetween(from, to, centre) }];
  const start = atRim.onCircle;
  const segments: Segment[] = [
    arcFrom(start, axis, 2 * (half - angleOf(start))),
    ...round(across(start), across(atRim.centre), across(atRim.onSide)),
    { to: across(atHub.onSide) },
    ...round(across(atHub.onSide), across(atHub.centre), across(atHub.onCircle)),
    arcFrom(across(atHub.onCircle), axis, -2 * (half - angleOf(atHub.onCircle))),
    ...round(atHub.onCircle, atHub.centre, atHub.onSide),
    { to: atRim.onSide },
    ...round(atRim.onSide, atRim.centre, start),
  ];
  return { start, segments };
}

function turnBetween(from: Point, to: Point, centre: Point): number {
  const [a, b] = [from, to].map((p) => ({ x: p.x - centre.x, y: p.y - centre.y })) as [Point, Point];
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}
