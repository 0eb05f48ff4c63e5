import { areaD, differenceD, FillRule, type PathD, unionD } from 'clipper2-ts';
import { expect, it } from 'vitest';
import { areaOf, endOf, flattened, isArc } from '../../src/geometry/curves/path.js';
import { distance, type Point, polar, turned } from '../../src/geometry/curves/point.js';
import { svgPath } from '../../src/geometry/curves/svg-path.js';
import { spaceSide, wheelFlanks } from '../../src/geometry/involute/flank.js';
import { involuteOutline, involuteTooth } from '../../src/geometry/involute/outline.js';
import { basicRack } from '../../src/geometry/involute/rack.js';
import { rackRoot } from '../../src/geometry/involute/root.js';

const DEGREE = Math.PI / 180;

/** Least distance of a place from a closed polygon or an open run of points. */
function away(p: Point, points: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const length = distance(a, b) ** 2 || 1;
    const share = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length;
    const t = Math.min(1, Math.max(0, share));
    least = Math.min(least, distance(p, { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }));
  }
  return least;
}

it.each([
  [120, 0.8, 20],
  [60, 0.8, 20],
  [8, 2, 20],
  [10, 1, 20],
  [12, 5, 14.5],
  [30, 1, 25],
  [5, 1, 10],
  [1000, 0.1, 20],
])(
  '%s teeth, module %s, %s°: within 0.002 mm of the true curves, between the places fitted too',
  (z, m, a) => {
    const tooth = flattened(involuteTooth(z, m, a * DEGREE), 1e-5);
    const outline = [...tooth, ...tooth.map((p) => turned(p, (2 * Math.PI) / z))];
    const flanks = wheelFlanks(z, m, a * DEGREE);
    const root = rackRoot(z, m, a * DEGREE);
    // The space after the tooth, whose middle lies half a pitch round.
    for (let i = 0; i <= 300; i++) {
      const flank = spaceSide(flanks, flanks.from + ((flanks.to - flanks.from) * i) / 300);
      const foot = root.at((root.meets * i) / 300);
      for (const place of [flank, foot])
        expect(away(turned(place, Math.PI / z), outline)).toBeLessThan(0.0021);
    }
  },
);

/** One tooth of the rack, tip inwards, its middle on the x axis; it reaches out beyond the blank. */
function rackTooth(teeth: number, module: number, pressureAngle: number): Point[] {
  const { rounding, dedendum } = basicRack(pressureAngle);
  const pitchRadius = teeth / 2;
  const side = [
    { depth: -2, beside: Math.PI / 4 + 2 * Math.tan(pressureAngle) },
    ...Array.from({ length: 25 }, (_, i) => {
      const slant = ((Math.PI / 2 - pressureAngle) * (24 - i)) / 24;
      return {
        depth: rounding.depth + rounding.radius * Math.cos(slant),
        beside: rounding.beside + rounding.radius * Math.sin(slant),
      };
    }),
  ];
  expect(Math.max(...side.map(({ depth }) => depth))).toBeCloseTo(dedendum, 12);
  const upper = side.map(({ depth, beside }) => ({ x: module * (pitchRadius - depth), y: module * beside }));
  return [...upper, ...upper.map(({ x, y }) => ({ x, y: -y })).reverse()];
}

/** What is left of a blank after one tooth of the rack has been rolled through it, by the polygon library. */
function oneSpaceCut(teeth: number, module: number, pressureAngle: number, positions: number): PathD {
  const pitchRadius = (module * teeth) / 2;
  const blank = Array.from({ length: 1800 }, (_, i) => polar(pitchRadius + module, (i * Math.PI) / 900));
  const rack = rackTooth(teeth, module, pressureAngle);
  const reach = (4 * module) / pitchRadius;
  const swept = Array.from({ length: positions + 1 }, (_, i) => {
    const roll = reach * ((2 * i) / positions - 1);
    return rack.map(({ x, y }) => turned({ x, y: y + pitchRadius * roll }, -roll));
  });
  const left = differenceD([blank], unionD(swept, [], FillRule.NonZero, 6), FillRule.NonZero, 6);
  return left.reduce((a, b) => (Math.abs(areaD(b)) > Math.abs(areaD(a)) ? b : a));
}

it.each([
  [8, 20],
  [10, 20],
  [12, 20],
  [17, 20],
  [30, 20],
  [12, 14.5],
  [8, 25],
])('%s teeth at %s°: the same as a rack polygon rolled through a blank at 200 places', (teeth, degrees) => {
  const module = 1;
  const angle = degrees * DEGREE;
  const cut = oneSpaceCut(teeth, module, angle, 200);
  const outline = involuteOutline(teeth, module, angle, 1e-4);
  const blankArea = Math.PI * (teeth / 2 + 1) ** 2;
  // One space was cut; the whole wheel has as many as teeth.
  const left = blankArea - teeth * (blankArea - Math.abs(areaD(cut)));
  expect(Math.abs(left - areaOf(outline)) / teeth).toBeLessThan(0.002);

  const space = cut.filter(
    ({ x, y }) => Math.abs(Math.atan2(y, x)) < Math.PI / teeth && Math.hypot(x, y) < teeth / 2 + 0.999,
  );
  const tooth = flattened(involuteTooth(teeth, module, angle, 1e-4), 1e-5);
  const round = [
    tooth.map((p) => turned(p, -Math.PI / teeth)),
    tooth.map((p) => turned(p, Math.PI / teeth)),
  ].flat();
  expect(space.length).toBeGreaterThan(50);
  expect(Math.max(...space.map((p) => away(p, round)))).toBeLessThan(0.002);
});

it('an undercut foot lies inside the tooth: the neck is narrower than the tooth above it', () => {
  for (const teeth of [8, 10, 12]) {
    const root = rackRoot(teeth, 1, 20 * DEGREE);
    const wall = Array.from({ length: 400 }, (_, i) => root.at((root.meets * i) / 399));
    const meets = wall.at(-1) as Point;
    // Half the tooth, straight across: what is left of half a pitch at each place of the wall.
    const half = ({ x, y }: Point): number => Math.hypot(x, y) * Math.sin(Math.PI / teeth - Math.atan2(y, x));
    expect(Math.min(...wall.map(half))).toBeLessThan(half(meets) - 0.005);
  }
  const whole = rackRoot(30, 1, 20 * DEGREE);
  expect(whole.undercut).toBe(false);
});

it('is one closed outline of few pieces, and its SVG some hundred characters a tooth', () => {
  const outline = involuteOutline(120, 0.8, 20 * DEGREE);
  expect(distance(outline.start, endOf(outline))).toBeLessThan(1e-9);
  expect(outline.segments.length / 120).toBeLessThanOrEqual(8);
  expect(outline.segments.every(isArc)).toBe(true);
  expect(svgPath(outline)).toMatch(/^M[^M]*Z$/);
  expect(svgPath(outline).length / 120).toBeLessThan(230);
});
