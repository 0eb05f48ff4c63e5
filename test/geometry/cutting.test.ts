import { areaD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, endOf, flattened } from '../../src/geometry/curves/path.js';
import { distance, polar } from '../../src/geometry/curves/point.js';
import { between, metalRound } from '../../src/geometry/cutting/around.js';
import { cutterForm, cutterPolygon } from '../../src/geometry/cutting/cutter.js';
import { diagnoseSpacing } from '../../src/geometry/cutting/diagnose.js';
import { cutAngles } from '../../src/geometry/cutting/indexing.js';
import { measureWheel } from '../../src/geometry/cutting/measure.js';
import { cutWheel, type Job } from '../../src/geometry/cutting/simulate.js';
import { rollAt, spaceOf, wallFace } from '../../src/geometry/cutting/space.js';
import { cutClassWheel, moves, parts, pitchRadius, space } from './cutting-wheel.js';

const counts = fc
  .tuple(fc.integer({ min: 6, max: 200 }), fc.integer({ min: 5, max: 16 }))
  .map(([teeth, leaves]) => [Math.max(teeth, leaves), leaves] as const);

describe('the cutter’s form', () => {
  it('is symmetric, starts and ends on the rim, and has the middle of its tip at the origin', () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 0.05, max: 20, noNaN: true }), ([teeth, leaves], module) => {
        const one = spaceOf(teeth, leaves, module, { ...parts, addendum: 1.1 });
        const form = cutterForm(one, 0.002 * Math.min(1, module));
        const points = flattened(form, 0.01 * module);
        const mirror = [...points].reverse();
        points.forEach((p, i) => {
          expect(p.x).toBeCloseTo(-(mirror[i]?.x ?? 0), 8);
          expect(p.y).toBeCloseTo(mirror[i]?.y ?? 0, 8);
        });
        expect(points.some(({ x, y }) => Math.hypot(x, y) < 1e-9)).toBe(true);
        const end = endOf(form);
        expect(Math.hypot(end.x, end.y + one.rootRadius)).toBeCloseTo(one.rimRadius, 8);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps within 0.002 mm of the epicycloid, at 500 places of the face', () => {
    const form = flattened(cutterForm(space, 0.002), 1e-6);
    const wall = wallFace(space);
    const roll = rollAt(space, space.rimRadius);
    for (let i = 0; i <= 500; i++) {
      const { x, y } = wall((roll * i) / 500);
      const p = { x, y: y - space.rootRadius };
      const away = Math.min(
        ...form.slice(1).map((b, k) => {
          const a = form[k] ?? b;
          const t = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / (distance(a, b) ** 2 || 1);
          const share = Math.min(1, Math.max(0, t));
          return distance(p, { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) });
        }),
      );
      expect(away).toBeLessThan(0.0021);
    }
  });

  it('takes a dozen arcs and lines for the class wheel, and a sharp corner none for its corners', () => {
    expect(cutterForm(space, 0.002).segments.length).toBeLessThanOrEqual(12);
    const sharp = spaceOf(60, 8, 0.8, { ...parts, corner: 0 });
    expect(cutterForm(sharp, 0.002).segments.length).toBe(cutterForm(space, 0.002).segments.length - 2);
  });

  it('is as many times larger as its module', () => {
    const twice = cutterForm(spaceOf(60, 8, 1.6, parts), 0.004);
    cutterForm(space, 0.002).segments.forEach(({ to }, i) => {
      expect(twice.segments[i]?.to.x).toBeCloseTo(2 * to.x, 6);
      expect(twice.segments[i]?.to.y).toBeCloseTo(2 * to.y, 6);
    });
  });
});

describe('a wheel that is cut', () => {
  it('is clean when nothing is wrong: equal teeth, as wide as the spaces, and the metal of blank less spaces', () => {
    fc.assert(
      fc.property(counts, ([teeth, leaves]) => {
        const one = spaceOf(teeth, leaves, 1, { ...parts, addendum: 1.1 });
        const cuts = cutAngles({ teeth, steps: teeth, stepError: 0 });
        const job: Job = {
          space: one,
          cuts,
          tipAt: one.rootRadius,
          offset: 0,
          blankRadius: one.rimRadius,
          eccentricity: 0,
        };
        const outlines = cutWheel(job);
        const wheel = measureWheel(outlines, job, teeth, one.pitchRadius);
        for (const tooth of wheel.toothThicknesses) expect(Math.abs(tooth - Math.PI / 2)).toBeLessThan(1e-3);
        // The form as a path of true arcs, closed by the rim.
        const form = cutterForm(one, 1e-4);
        const half = Math.asin(endOf(form).x / one.rimRadius);
        const gap = Math.abs(areaOf(form)) + one.rimRadius ** 2 * (half - Math.sin(half) * Math.cos(half));
        const expected = Math.PI * one.rimRadius ** 2 - teeth * gap;
        expect(Math.abs(wheel.area - expected)).toBeLessThan(0.004 * teeth);
        expect(outlines).toHaveLength(1);
      }),
      { numRuns: 40 },
    );
  });

  it('has the area that the library gives it', () => {
    const { outlines, area } = cutClassWheel({ offset: 0.1, eccentricity: 0.2 });
    const scaled = outlines.map((outline) => outline.map(({ x, y }) => ({ x, y })));
    expect(scaled.reduce((sum, one) => sum + areaD(one), 0)).toBeCloseTo(area, 9);
  });

  it('never gains metal by another cut, a deeper one or a wider cutter', () => {
    const one = cutClassWheel().area;
    expect(cutClassWheel({ cuts: [...moves(), 3] }).area).toBeLessThan(one - 0.5);
    expect(cutClassWheel({ tipAt: space.rootRadius - 0.1 }).area).toBeLessThan(one);
    expect(cutClassWheel({ space: spaceOf(60, 8, 0.85, parts) }).area).toBeLessThan(one);
    expect(cutClassWheel({ cuts: moves().slice(1) }).area).toBeGreaterThan(one + 0.5);
  });

  it('leans as much the other way when the cutter is off to the other side, tooth for tooth', () => {
    const right = cutClassWheel({ offset: 0.3 });
    const left = cutClassWheel({ offset: -0.3 });
    expect(left.lean).toBeCloseTo(-right.lean, 3);
    expect(left.area).toBeCloseTo(right.area, 1);
  });

  it('is the same wheel larger, at a larger module', () => {
    const large = spaceOf(60, 8, 4, parts);
    const job = {
      space: large,
      cuts: moves({ stepError: 40 }),
      tipAt: large.rootRadius,
      offset: 0.5,
      blankRadius: large.rimRadius,
      eccentricity: 0,
    };
    const wheel = measureWheel(cutWheel(job), job, 60, 120);
    const small = cutClassWheel({ cuts: moves({ stepError: 40 }), offset: 0.1 });
    wheel.toothThicknesses.forEach((tooth, i) => {
      expect(Math.abs(tooth / 5 - (small.toothThicknesses[i] ?? 0))).toBeLessThan(1e-4);
    });
    expect(wheel.lean).toBeCloseTo(small.lean, 3);
  });

  it('reaches past every blank with its cutter', () => {
    const polygon = cutterPolygon(space, 9, 4e-4);
    expect(Math.max(...polygon.map(({ y }) => y))).toBeCloseTo(9, 6);
  });
});

describe('from a spoiled wheel back to the slip', () => {
  const teeth = fc.integer({ min: 12, max: 120 });
  const share = fc.double({ min: 0.03, max: 0.35, noNaN: true });
  const sign = fc.constantFrom(-1, 1);

  function cut(count: number, indexing: Parameters<typeof cutAngles>[0]) {
    const one = spaceOf(count, 8, 0.8, parts);
    const job: Job = {
      space: one,
      cuts: cutAngles(indexing),
      tipAt: one.rootRadius,
      offset: 0,
      blankRadius: one.rimRadius,
      eccentricity: 0,
    };
    return measureWheel(cutWheel(job), job, count, one.pitchRadius);
  }

  it('diagnose(simulate(slip)) is the slip: its place, its size, and whether it was put back', () => {
    fc.assert(
      fc.property(
        teeth,
        share,
        sign,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.boolean(),
        (count, part, way, where, putBack) => {
          const pitch = (360 * 3600) / count;
          // The last move has none after it to put it back.
          const at = 1 + Math.floor(where * (count - (putBack ? 3 : 2)));
          const by = way * part * pitch;
          const found = diagnoseSpacing(
            count,
            0.8,
            cut(count, { teeth: count, steps: count, stepError: 0, slip: { at, by, putBack } }),
          );
          expect(found.spacing).toEqual([putBack ? 'slipPutBack' : 'slip']);
          expect(found.slip).toMatchObject({ at, putBack });
          // A thousandth of a module on the pitch circle.
          expect(Math.abs((found.slip?.by ?? 0) - by)).toBeLessThan((2e-3 / count) * 206_265 * 2);
          expect(Math.abs(found.stepError)).toBeLessThan((2e-3 / count) * 206_265);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('and the error of every move, from what is gathered at the closing tooth', () => {
    fc.assert(
      fc.property(teeth, share, sign, (count, part, way) => {
        const stepError = (way * part * 360 * 3600) / count / count;
        const found = diagnoseSpacing(count, 0.8, cut(count, { teeth: count, steps: count, stepError }));
        expect(found.spacing).toEqual([way < 0 ? 'closingThick' : 'closingThin']);
        // Told from the sum of all moves, so as many times closer.
        expect(Math.abs(found.stepError - stepError)).toBeLessThan(
          ((2e-3 / count) * 206_265 * 2) / (count - 1),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('tells an unfinished wheel, an even one of another count, and one with two slips', () => {
    expect(diagnoseSpacing(60, 0.8, cut(60, { teeth: 60, steps: 57, stepError: 0 })).spacing).toEqual([
      'unfinished',
    ]);
    const stepError = (360 / 56 - 6) * 3600;
    const other = diagnoseSpacing(60, 0.8, cut(60, { teeth: 60, steps: 56, stepError }));
    expect(other.spacing).toEqual(['otherCount']);
    expect(other.stepError).toBeCloseTo(stepError, 0);
    const twice = cutClassWheel({
      cuts: moves().map((cut, i) => cut + (i > 10 ? 0.3 : 0) + (i > 40 ? 0.3 : 0)),
    });
    expect(diagnoseSpacing(60, 0.8, twice).spacing).toEqual(['uneven']);
    expect(diagnoseSpacing(60, 0.8, cutClassWheel()).spacing).toEqual([]);
  });
});

describe('metal round a circle', () => {
  const square = [
    polar(2, 0.25 * Math.PI),
    polar(2, 0.75 * Math.PI),
    polar(2, 1.25 * Math.PI),
    polar(2, 1.75 * Math.PI),
  ];

  it('finds the four corners of a square that stand out of a circle’s way', () => {
    const metal = metalRound([square], { x: 0, y: 0 }, 1.5);
    const side = (Math.acos(Math.SQRT2 / 1.5) * 180) / Math.PI;
    expect(metal).toHaveLength(0); // each side dips in and out again: a circle may cross an edge once only
    const cut = metalRound(
      [square.flatMap((p, i) => [p, middle(p, square[(i + 1) % 4] ?? p)])],
      { x: 0, y: 0 },
      1.5,
    );
    expect(cut).toHaveLength(4);
    for (const { from, to } of cut) expect(to - from).toBeCloseTo(90 - 2 * side, 9);
  });

  it('shares stretches between bounds, and nothing is lost', () => {
    const stretches = [
      { from: 350, to: 370 },
      { from: 40, to: 50 },
      { from: 100, to: 300 },
    ];
    expect(between(stretches, [0, 45, 120])).toEqual([15, 25, 190]);
    expect(between(stretches, [355, 45])).toEqual([20, 210]);
  });
});

const middle = (a: { x: number; y: number }, b: { x: number; y: number }) => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
});

it('measures about the axis of the head, whatever the pitch circle', () => {
  const { outlines, toothThicknesses } = cutClassWheel();
  const stretches = metalRound(outlines, { x: 0, y: 0 }, pitchRadius);
  expect(stretches).toHaveLength(toothThicknesses.length);
});
