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
  const sum = [...svgPath(steps).matchAll(/l([\d.]+)/g)].reduce((x, [, step]) => x + Number(step), 0);
  expect(sum).toBeCloseTo(1000 / 3, 3);
});
