import { areaD, differenceD, FillRule } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, endOf, flattened, isArc } from '../../src/geometry/curves/path.js';
import { distance, type Point, polar, turned } from '../../src/geometry/curves/point.js';
import { svgPath } from '../../src/geometry/curves/svg-path.js';
import { theoreticalAddendum } from '../../src/geometry/wheels/epicycloid.js';
import { leafSide } from '../../src/geometry/wheels/leaf.js';
import { pinionLeaf, pinionOutline } from '../../src/geometry/wheels/pinion-outline.js';
import { type CycloidalWheel, wheelOutline, wheelTooth } from '../../src/geometry/wheels/wheel-outline.js';

const wheel = (teeth: number, leaves: number, module: number, share = 0.95): CycloidalWheel => ({
  teeth,
  leaves,
  module,
  addendum: share * theoreticalAddendum(teeth, leaves),
  dedendum: 1.57,
});

/**
 * One side of a tooth from scratch: a point of a circle rolled on the pitch circle in a great many small steps, each
 * turning it about the place where the two touch. Shares nothing with the epicycloid's formula.
 */
function rolledFace({ teeth, leaves, module, addendum }: CycloidalWheel, steps = 40_000): Point[] {
  const [pitch, roller] = [(module * teeth) / 2, (module * leaves) / 4];
  const step = Math.PI / 2 / steps;
  const turn = step * (1 + roller / pitch);
  let [place, at] = [polar(pitch, 0), 0];
  const places = [place];
  while (
    Math.hypot(place.x, place.y) < pitch + module * addendum &&
    Math.atan2(place.y, place.x) < Math.PI / 2 / teeth
  ) {
    // The place of touch half-way through the step.
    at += (step * roller) / pitch;
    const touch = polar(pitch, at - (step * roller) / pitch / 2);
    const from = turned({ x: place.x - touch.x, y: place.y - touch.y }, turn);
    place = { x: touch.x + from.x, y: touch.y + from.y };
    places.push(place);
  }
  return places;
}

/** Least distance of a place from a run of points. */
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

/** The first side of the tooth on the x axis, true to its curves, from foot to tip. */
function trueSide(one: CycloidalWheel): Point[] {
  const foot = (one.module * one.teeth) / 2 - one.module * one.dedendum;
  return [polar(foot, 0), ...rolledFace(one)].map((p) => turned(p, -Math.PI / 2 / one.teeth));
}

const PAIRS = [
  [60, 8, 0.8],
  [120, 8, 0.8],
  [120, 6, 0.3],
  [96, 16, 1],
  [24, 8, 5],
  [6, 6, 20],
  [1000, 5, 0.05],
] as const;

describe.each(PAIRS)('%s teeth for %s leaves, module %s', (teeth, leaves, module) => {
  it.each([0.95, 1])('lies within 0.002 mm of a rolled circle and a radial flank, addendum × %s', (share) => {
    const one = wheel(teeth, leaves, module, share);
    const outline = flattened(wheelTooth(one), 1e-5);
    const side = trueSide(one);
    const every = Math.max(1, Math.floor(side.length / 400));
    for (let i = 0; i < side.length - 1; i += every)
      expect(away(side[i] as Point, outline)).toBeLessThan(0.0021);
    // And the other way about: nothing of the outline's own side strays from the true one.
    const own = outline.filter(
      (p) => p.y < -1e-9 && Math.hypot(p.x, p.y) > Math.hypot(side[0]?.x ?? 0, side[0]?.y ?? 0),
    );
    const thinned = side.filter((_, i) => i % 20 === 0 || i > side.length - 3);
    for (const p of own.slice(0, 400)) {
      const onLand =
        Math.abs(Math.hypot(p.x, p.y) - Math.hypot(side.at(-1)?.x ?? 0, side.at(-1)?.y ?? 0)) < 1e-4 * module;
      if (!onLand) expect(away(p, thinned)).toBeLessThan(0.0023);
    }
  });

  it('encloses the area of a polygon made independently, by the polygon library', () => {
    const one = wheel(teeth, leaves, module);
    const side = trueSide(one).filter((_, i, all) => i < 2 || i % 100 === 0 || i === all.length - 1);
    const back = side.map(({ x, y }) => ({ x, y: -y })).reverse();
    const root = Math.hypot(side[0]?.x ?? 0, side[0]?.y ?? 0);
    const half = Math.PI / 2 / teeth;
    const bottom = Array.from({ length: 60 }, (_, i) => polar(root, half + (2 * half * (i + 1)) / 61));
    const tip = Math.hypot(side.at(-1)?.x ?? 0, side.at(-1)?.y ?? 0);
    const land = Math.atan2(-(side.at(-1)?.y ?? 0), side.at(-1)?.x ?? 1);
    const top = Array.from({ length: 20 }, (_, i) => polar(tip, land * ((2 * (i + 1)) / 21 - 1)));
    const tooth = [...side, ...top, ...back, ...bottom];
    const polygon = Array.from({ length: teeth }, (_, i) =>
      tooth.map((p) => turned(p, (2 * Math.PI * i) / teeth)),
    ).flat();
    const outline = wheelOutline(one);
    // A band of the tolerance along both sides of every tooth; the polygon's chords are far closer.
    const allowed = teeth * 2 * 3 * module * 0.0021 + 2e-6 * areaOf(outline);
    expect(Math.abs(Math.abs(areaD(polygon)) - areaOf(outline))).toBeLessThan(allowed);
    const left = differenceD([polygon], [flattened(outline, 1e-4)], FillRule.NonZero, 6);
    expect(left.reduce((sum, path) => sum + Math.abs(areaD(path)), 0)).toBeLessThan(allowed);
  });
});

it('is closed, of few pieces, and short as SVG', () => {
  const outline = wheelOutline(wheel(120, 8, 0.8));
  expect(distance(outline.start, endOf(outline))).toBe(0);
  expect(outline.segments.length).toBe(120 * 8);
  expect(svgPath(outline).length).toBeLessThan(19_000);
  expect(svgPath(outline)).toMatch(/^M[^M]*Z$/);
  // A coarser tolerance makes a shorter outline.
  expect(svgPath(wheelOutline(wheel(120, 8, 0.8), 0.01)).length).toBeLessThan(15_000);
});

it('is cut off at the practical addendum and pointed at the theoretical one', () => {
  const tips = (share: number): Point[] => {
    const points = flattened(wheelTooth(wheel(60, 8, 0.8, share)), 1e-5);
    const furthest = Math.max(...points.map((p) => Math.hypot(p.x, p.y)));
    expect(furthest).toBeCloseTo(24 + 0.8 * share * theoreticalAddendum(60, 8), 9);
    return points.filter((p) => Math.hypot(p.x, p.y) > furthest - 1e-6);
  };
  expect(tips(0.95).length).toBeGreaterThanOrEqual(2);
  expect(tips(1).every((p) => Math.abs(p.y) < 1e-9)).toBe(true);
  // More than where the faces meet makes no difference.
  const [pointed, more] = [1, 1.3].map((share) => svgPath(wheelOutline(wheel(60, 8, 0.8, share))));
  expect(more).toBe(pointed);
});

it('a round root touches the root circle and both flanks; a flat one follows the root circle', () => {
  const lowest = (points: readonly Point[]) => Math.min(...points.map((p) => Math.hypot(p.x, p.y)));
  for (const root of ['flat', 'round'] as const) {
    const points = flattened(wheelTooth({ ...wheel(60, 8, 0.8), root }), 1e-6);
    expect(lowest(points)).toBeCloseTo(24 - 0.8 * 1.57, 5);
  }
  const tooth = wheelTooth({ ...wheel(60, 8, 0.8), root: 'round' });
  const round = tooth.segments.at(-1);
  if (!round || !isArc(round)) throw new Error('no round');
  // A tangent flank is square to the radius at the round's end, and the flank is radial.
  const { to, centre } = round;
  expect((to.x - centre.x) * to.x + (to.y - centre.y) * to.y).toBeCloseTo(0, 9);
  expect(areaOf(wheelOutline({ ...wheel(60, 8, 0.8), root: 'round' }))).toBeGreaterThan(
    areaOf(wheelOutline(wheel(60, 8, 0.8))),
  );
  expect(() => wheelOutline({ ...wheel(60, 8, 0.8), dedendum: 0.5, root: 'round' })).toThrow(RangeError);
  expect(() => wheelOutline({ ...wheel(6, 6, 0.8), dedendum: 3 })).toThrow(RangeError);
});

it('scales with the module, and has as many teeth as asked', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 6, max: 200 }),
      fc.integer({ min: 5, max: 30 }),
      fc.double({ min: 0.05, max: 20, noNaN: true }),
      (teeth, leaves, module) => {
        fc.pre(leaves <= teeth);
        const outline = wheelOutline(wheel(teeth, leaves, module));
        const unit = wheelOutline(wheel(teeth, leaves, 1), 0.002 / module);
        expect(areaOf(outline) / (module * module * areaOf(unit))).toBeCloseTo(1, 9);
        const tips = flattened(outline, 0.01 * module).filter(
          (p, i, all) =>
            Math.hypot(p.x, p.y) > (module * teeth) / 2 &&
            (all[i - 1] ? Math.hypot(all[i - 1]?.x ?? 0, all[i - 1]?.y ?? 0) : 0) <=
              ((module * teeth) / 2) * (1 + 1e-12),
        );
        expect(tips.length).toBe(teeth);
      },
    ),
    { numRuns: 60 },
  );
});

const ogive = { addendum: 0.855, dedendum: 1.9, leafThickness: 1.05, tipRadius: 1.05 };

it('a pinion is arcs and lines by nature: sizes as asked, arcs of the tip radius, leaves evenly round', () => {
  const outline = pinionOutline({ leaves: 8, module: 0.8, ...ogive });
  expect(distance(outline.start, endOf(outline))).toBe(0);
  const points = flattened(outline, 1e-5);
  const radii = points.map((p) => Math.hypot(p.x, p.y));
  expect(Math.max(...radii)).toBeCloseTo(0.8 * 4.855, 9);
  expect(Math.min(...radii)).toBeCloseTo(0.8 * 2.1, 9);
  const leaf = pinionLeaf({ leaves: 8, module: 0.8, ...ogive });
  const tipArcs = leaf.segments.filter(
    (one) => isArc(one) && Math.abs(distance(one.to, one.centre) - 0.84) < 1e-9,
  );
  expect(tipArcs).toHaveLength(2);
  // Thickness along the pitch circle, read off the outline.
  const atPitch = points.filter(
    (p) => Math.abs(Math.hypot(p.x, p.y) - 3.2) < 1e-9 && Math.abs(Math.atan2(p.y, p.x)) < 0.3,
  );
  const [low, high] = [
    Math.min(...atPitch.map((p) => Math.atan2(p.y, p.x))),
    Math.max(...atPitch.map((p) => Math.atan2(p.y, p.x))),
  ];
  expect(3.2 * (high - low)).toBeCloseTo(0.84, 9);
  expect(svgPath(outline).length).toBeLessThan(1200);
});

it('a half-round tip (profile A) is a semicircle on the leaf; an arc too small for its addendum is refused', () => {
  for (const [leaves, half] of [
    [8, 0.525],
    [12, 0.625],
  ] as const) {
    const side = leafSide(leaves, { addendum: half, leafThickness: 2 * half, tipRadius: half });
    // Its centre stands on the leaf's middle, close to the pitch circle.
    expect(Math.atan2(side.arcCentre.y, side.arcCentre.x)).toBeCloseTo(side.halfAngle, 1);
    expect(Math.hypot(side.arcCentre.x, side.arcCentre.y)).toBeCloseTo(leaves / 2, 1);
    expect(() =>
      pinionOutline({
        leaves,
        module: 1,
        dedendum: 1.5,
        addendum: half,
        leafThickness: 2 * half,
        tipRadius: half,
        root: 'round',
      }),
    ).not.toThrow();
  }
  expect(() => pinionOutline({ leaves: 8, module: 1, ...ogive, tipRadius: 0.3 })).toThrow(RangeError);
});

it('the leaf’s side is known at every radius: its places lie on the drawn outline', () => {
  const pinion = { leaves: 8, module: 1, ...ogive };
  const side = leafSide(8, ogive);
  const outline = flattened(pinionLeaf(pinion), 1e-7);
  for (let i = 0; i <= 100; i++) {
    const radius = 2.2 + (side.tipRadius - 2.2) * (i / 100);
    const place = polar(radius, side.backAt(radius) - side.halfAngle);
    expect(away(place, outline)).toBeLessThan(1e-6);
  }
});
