import { areaD } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Curve, fitArcs } from '../../src/geometry/curves/fit-arcs.js';
import {
  areaOf,
  endOf,
  flattened,
  isArc,
  joined,
  lengthOf,
  mirroredPath,
  type Path,
  reversed,
  throughPoints,
  turnedPath,
} from '../../src/geometry/curves/path.js';
import { distance, polar } from '../../src/geometry/curves/point.js';
import { svgPath } from '../../src/geometry/curves/svg-path.js';
import { wheelFace } from '../../src/geometry/wheels/epicycloid.js';

/** Least distance of a place from a path, by many short chords. */
function away(path: Path, p: { x: number; y: number }): number {
  const points = flattened(path, 1e-7);
  return Math.min(
    ...points.slice(1).map((b, i) => {
      const a = points[i] ?? b;
      const length = distance(a, b) ** 2 || 1;
      const share = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length;
      const t = Math.min(1, Math.max(0, share));
      return distance(p, { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
    }),
  );
}

it('keeps within the tolerance of the epicycloid, at 1,000 places between those it was fitted at', () => {
  for (const [teeth, leaves, module] of [
    [60, 8, 0.8],
    [120, 6, 0.3],
    [24, 16, 5],
  ] as const) {
    const face = wheelFace(teeth, leaves, module);
    const path = fitArcs(face.at, 0, face.tipRoll, 0.002);
    expect(distance(path.start, face.at(0))).toBe(0);
    expect(distance(endOf(path), face.at(face.tipRoll))).toBe(0);
    for (let i = 0; i <= 1000; i++)
      expect(away(path, face.at((face.tipRoll * i) / 1000))).toBeLessThan(0.0021);
  }
});

it('takes two or three arcs for the face of the class wheel', () => {
  const face = wheelFace(60, 8, 0.8);
  expect(fitArcs(face.at, 0, face.tipRoll, 0.002).segments.length).toBeLessThanOrEqual(3);
});

it('follows a circle with one arc and a line with one line', () => {
  const circle: Curve = (t) => polar(5, t);
  expect(fitArcs(circle, 0, 1, 1e-6).segments).toMatchObject([{ turn: expect.closeTo(1, 9) }]);
  const line: Curve = (t) => ({ x: t, y: 2 * t });
  expect(fitArcs(line, 0, 1, 1e-6).segments.map(isArc)).toEqual([false]);
});

/** A half disc: an arc back to the start of a diameter. */
const halfDisc = (radius: number): Path => ({
  start: { x: radius, y: 0 },
  segments: [
    { to: { x: -radius, y: 0 }, centre: { x: 0, y: 0 }, turn: Math.PI },
    { to: { x: radius, y: 0 } },
  ],
});

it('measures area and length, whichever way the path lies', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: -7, max: 7, noNaN: true }),
      (r, angle) => {
        const path = turnedPath(halfDisc(r), angle);
        expect(areaOf(path)).toBeCloseTo((Math.PI * r * r) / 2, 6);
        expect(areaOf(mirroredPath(path))).toBeCloseTo((-Math.PI * r * r) / 2, 6);
        expect(areaOf(reversed(path))).toBeCloseTo((-Math.PI * r * r) / 2, 6);
        expect(lengthOf(path)).toBeCloseTo(Math.PI * r + 2 * r, 8);
        // A third opinion on the area: the polygon library.
        expect(areaD(flattened(path, 1e-4))).toBeCloseTo(areaOf(path), 0);
      },
    ),
  );
});

it('joins paths with a line over a gap and none where they meet', () => {
  const a = throughPoints([polar(1, 0), polar(2, 0)]);
  expect(joined(a, throughPoints([polar(2, 0), polar(3, 0)])).segments).toHaveLength(2);
  expect(joined(a, throughPoints([polar(4, 1), polar(3, 0)])).segments).toHaveLength(3);
});

it('writes arcs as arcs, y turned down, and never drifts by rounding', () => {
  expect(svgPath(halfDisc(2))).toBe('M2 0a2 2 0 0 0-4 0l4 0Z');
  const steps = throughPoints(Array.from({ length: 1001 }, (_, i) => ({ x: i / 3, y: 0 })));
  const numbers = [
    ...svgPath(steps)
      .slice(4)
      .matchAll(/-?(?:\d+\.?\d*|\.\d+)/g),
  ].map(Number);
  expect(numbers).toHaveLength(2000);
  expect(numbers.reduce((x, step, i) => (i % 2 === 0 ? x + step : x), 0)).toBeCloseTo(1000 / 3, 3);
});

it('writes no more than is needed: letters once, radii short, arcs as flat as lines as lines', () => {
  const steps: Path = {
    start: polar(0, 0),
    segments: [{ to: { x: 0.5, y: 0.25 } }, { to: { x: 1.5, y: -0.25 } }],
  };
  expect(svgPath(steps)).toBe('M0 0l.5-.25 1 .5');
  const arc = (radius: number, turn: number): Path => ({
    start: polar(radius, 0),
    segments: [{ to: polar(radius, turn), centre: { x: 0, y: 0 }, turn }],
  });
  // A thousandth of a millimetre of radius moves a short arc by far less than rounding does.
  expect(svgPath(arc(22.7438, 0.05))).toMatch(/^M22\.744 0a23 23 0 0 0-\.029-1\.137$/);
  expect(svgPath(arc(22.7438, 0.004))).toMatch(/^M22\.744 0l/);
  expect(svgPath(arc(22.7438, 3))).toContain('a22.744 22.744 ');
});

/** SVG path data read back: places and radii, absolute, y up again. */
function readBack(d: string): { to: { x: number; y: number }; radius?: number }[] {
  const places = [];
  let here = { x: 0, y: 0 };
  for (const [, letter = '', rest = ''] of d.matchAll(/([Mla])([^MlaZ]*)/g)) {
    const numbers = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(Number);
    const size = letter === 'a' ? 7 : 2;
    expect(numbers.length % size).toBe(0);
    for (let i = 0; i < numbers.length; i += size) {
      const [dx, dy] = numbers.slice(i + size - 2, i + size) as [number, number];
      here = { x: here.x + dx, y: here.y - dy };
      places.push({ to: here, ...(letter === 'a' && { radius: numbers[i] as number }) });
    }
  }
  return places;
}

it('read back, its places lie within rounding, and its arcs rise as the true ones do', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          radius: fc.double({ min: 0.05, max: 300, noNaN: true }),
          turn: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        }),
        { minLength: 1, maxLength: 30 },
      ),
      (arcs) => {
        let here = { x: 0, y: 0 };
        const segments = arcs.map(({ radius, turn }, i) => {
          const centre = { x: here.x + radius * Math.cos(i), y: here.y + radius * Math.sin(i) };
          const away = Math.atan2(here.y - centre.y, here.x - centre.x) + turn;
          here = { x: centre.x + radius * Math.cos(away), y: centre.y + radius * Math.sin(away) };
          return { to: here, centre, turn };
        });
        const back = readBack(svgPath({ start: { x: 0, y: 0 }, segments })).slice(1);
        segments.forEach(({ to, turn }, i) => {
          const { radius } = arcs[i] as (typeof arcs)[number];
          expect(distance((back[i] as { to: typeof to }).to, to)).toBeLessThan(0.001);
          const half = radius * Math.abs(Math.sin(turn / 2));
          const rise = (r: number): number => r - Math.sqrt(Math.max(0, r * r - half * half));
          const told = back[i]?.radius;
          expect(Math.abs((told === undefined ? 0 : rise(Math.max(told, half))) - rise(radius))).toBeLessThan(
            told === undefined || Math.abs(turn) < 1.4 ? 0.0006 : 0.05,
          );
        });
      },
    ),
  );
});
