import { distance, type Point, polar } from '../curves/point.js';
import { angleBetween, DEGREE } from './angles.js';
import { meet } from './meet.js';
import { type Case, type Corner, caseOf, NEXT, type Parts, type Triple, third } from './triangle-case.js';

/** A triangle with every part measured: side a lies opposite angle A; sides mm, angles degrees, area mm². */
export interface Triangle {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly area: number;
}

/** Sides this near to lying in one line, as a share of the shortest, lie in it. */
const FLAT = 1e-10;

/** A circle this near to a line, as a share of its radius, touches it. */
const TOUCH = 1e-12;

/** Angles below this are none: the rounding of a side that should have met its own beginning; degrees. */
const NO_ANGLE = 5e-8;

/**
 * Every triangle that has the three parts given, built corner by corner and then measured: none, one, or two. Of two
 * the first has its acute angle opposite the second side given. Parts given are kept as they were given.
 *
 * @param parts exactly three, at least one of them a side; sides above 0, angles above 0 and under 180
 * @throws {RangeError} for any other number of parts, or for angles alone
 */
export function trianglesOf(parts: Parts): Triangle[] {
  const given = Object.fromEntries(Object.entries(parts).filter(([, value]) => value !== undefined));
  return cornersOf(caseOf(parts)).map((corners) => ({ ...measured(corners), ...given }));
}

/**
 * How much longer than to the line the side is that swings about an end of the other side given, as a share of it;
 * below 0 where it is too short. For other parts there is no such side.
 */
export function reachPast(parts: Parts): number | undefined {
  const given = caseOf(parts);
  if (given.kind !== 'SSA') return undefined;
  return (given.opposite - polar(given.beside, given.angle * DEGREE).y) / given.opposite;
}

/** The corners A, B and C of each triangle with the parts of a case. */
export function cornersOf(given: Case): Triple<Point>[] {
  switch (given.kind) {
    case 'SSS':
      return threeSides(given.sides);
    case 'SAS':
      return twoSides(given);
    case 'ASA':
      return oneSide(given);
    case 'SSA':
      return sideSwung(given);
  }
}

/** Measures a triangle by its corners. */
export function measured([A, B, C]: Triple<Point>): Triangle {
  return {
    a: distance(B, C),
    b: distance(C, A),
    c: distance(A, B),
    A: angleBetween(A, B, C),
    B: angleBetween(B, C, A),
    C: angleBetween(C, A, B),
    area: Math.abs((B.x - A.x) * (C.y - A.y) - (B.y - A.y) * (C.x - A.x)) / 2,
  };
}

const ORIGIN: Point = { x: 0, y: 0 };
const east = (x: number): Point => ({ x, y: 0 });

/** Three places, each at its corner. */
function placed(...pairs: readonly (readonly [Corner, Point])[]): Triple<Point> {
  const corners: [Point, Point, Point] = [ORIGIN, ORIGIN, ORIGIN];
  for (const [corner, place] of pairs) corners[corner] = place;
  return corners;
}

/** Circles about both ends of the longest side meet; reckoned from the end where the shortest side begins. */
function threeSides(sides: Triple): Triple<Point>[] {
  const [short = 0, middle = 1, long = 2] = ([0, 1, 2] as const).toSorted((i, j) => sides[i] - sides[j]);
  const [r, R, base] = [sides[short], sides[middle], sides[long]];
  if (r - (base - R) <= FLAT * r) return [];
  const x = (r * r + (base - R) * (base + R)) / (2 * base);
  const top = { x, y: Math.sqrt((r - x) * (r + x)) };
  // Each corner faces its own side: the near end of the base faces the middle side.
  return [placed([long, top], [middle, ORIGIN], [short, east(base)])];
}

/** One side along the axis, the other turned from it. */
function twoSides({ at, angle, sides }: Extract<Case, { kind: 'SAS' }>): Triple<Point>[] {
  const near = NEXT[at];
  const far = NEXT[near];
  return [placed([at, ORIGIN], [near, east(sides[far])], [far, polar(sides[near], angle * DEGREE)])];
}

/** Lines from both ends of the side meet. */
function oneSide({ at, side, angles }: Extract<Case, { kind: 'ASA' }>): Triple<Point>[] {
  if (Math.min(...angles) < NO_ANGLE) return [];
  const near = NEXT[at];
  const far = NEXT[near];
  const end = east(side);
  const top = meet(
    { through: ORIGIN, towards: angles[near] * DEGREE },
    { through: end, towards: Math.PI - angles[far] * DEGREE },
  );
  return [placed([near, ORIGIN], [far, end], [at, top])];
}

/** The side opposite the angle swings about its end until it meets the line that the angle gives. */
function sideSwung({ at, angle, opposite, other, beside }: Extract<Case, { kind: 'SSA' }>): Triple<Point>[] {
  const pivot = polar(beside, angle * DEGREE);
  const over = opposite - pivot.y;
  if (over < -TOUCH * opposite) return [];
  const half = over <= TOUCH * opposite ? 0 : Math.sqrt(over * (opposite + pivot.y));
  const meetings = half === 0 ? [pivot.x] : [pivot.x + half, pivot.x - half];
  return meetings
    .filter((x) => x > 0 && angleBetween(pivot, ORIGIN, east(x)) >= NO_ANGLE)
    .map((x) => placed([at, ORIGIN], [third(at, other), pivot], [other, east(x)]));
}
