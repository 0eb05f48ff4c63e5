import { areaD, differenceD, FillRule } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf } from '../../src/geometry/curves/path.js';
import { distance, type Point } from '../../src/geometry/curves/point.js';
import {
  dropToCentre,
  heightAtTouch,
  offCentre,
  setOverForFace,
} from '../../src/geometry/setting-up/centring.js';
import { cutOffCentre } from '../../src/geometry/setting-up/leaning.js';
import {
  feedOfWork,
  speedOfRim,
  strikesPerSecond,
  turnsForSpeed,
} from '../../src/geometry/setting-up/speed.js';
import { cuttingTime } from '../../src/geometry/setting-up/time.js';
import { wheelOutline, wheelTooth } from '../../src/geometry/wheels/wheel-outline.js';
import { work } from '../../src/index.js';

const size = fc.double({ min: 0.5, max: 500, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('off centre', () => {
  it('leans more the further off and the smaller the work, and never when central', () => {
    fc.assert(
      fc.property(size, share, share, (diameter, one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)].map(
          (part) => (part * diameter) / 4,
        );
        expect(offCentre(diameter, more ?? 0).leanAngle).toBeGreaterThanOrEqual(
          offCentre(diameter, less ?? 0).leanAngle,
        );
        if ((more ?? 0) > 1e-9)
          expect(offCentre(diameter / 2, (more ?? 0) / 2.1).leanAngle).toBeLessThan(
            offCentre(diameter / 2, (more ?? 0) / 2).leanAngle,
          );
        expect(offCentre(diameter, 0)).toEqual({ leanAngle: 0, atRim: 0, halfTurnStep: 0 });
      }),
    );
  });

  it('an arc at the rim lies between the offset and π/3 of it, up to half the radius', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1e-6, max: 1, noNaN: true }), (diameter, part) => {
        const offset = (part * diameter) / 4;
        const { atRim } = offCentre(diameter, offset);
        expect(atRim).toBeGreaterThanOrEqual(offset * (1 - 1e-12));
        expect(atRim).toBeLessThanOrEqual(((offset * Math.PI) / 3) * (1 + 1e-12));
      }),
    );
  });

  it('given by its step or by its offset it is the same, and both or neither are refused', () => {
    fc.assert(
      fc.property(size, share, (diameter, part) => {
        const offset = (part * diameter) / 4;
        const by = (given: Record<string, number>) => work('setup.centreError', { diameter, ...given }).found;
        expect(by({ offset })).toEqual(by({ halfTurnStep: 2 * offset }));
      }),
    );
    const wrong = { diameter: 48, offset: 0.1, halfTurnStep: 0.2 };
    expect(() => work('setup.centreError', wrong)).toThrow(/not both/);
    expect(() => work('setup.centreError', { diameter: 48 })).toThrow(/^offset is missing/);
    expect(() => work('setup.centreError', { diameter: 48, offset: 12.1 })).toThrow(
      /at most half the radius/,
    );
  });
});

describe('touching and setting over', () => {
  it('a drop from the rim leaves the cutter’s middle on the axis', () => {
    fc.assert(
      fc.property(size, size, share, (diameter, thickness, feeler) => {
        const lowerFace = diameter / 2 + feeler;
        expect(lowerFace + thickness / 2 - dropToCentre(diameter, thickness, feeler)).toBeCloseTo(0, 9);
        const { height, gauge } = heightAtTouch(diameter, thickness, feeler);
        expect(gauge - thickness / 2).toBeCloseTo(diameter, 9);
        expect(height + feeler).toBeCloseTo(gauge, 9);
      }),
    );
  });

  it('a face cut so far over, seen from its tip, leans by the angle asked for', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.01, max: 45, noNaN: true }), (diameter, angle) => {
        const offset = setOverForFace(diameter, angle);
        // The face runs straight down at the offset; its tip is on the rim, and the radius there leans by the angle.
        const tip = { x: offset, y: Math.sqrt((diameter / 2) ** 2 - offset ** 2) };
        expect(distance(tip, { x: 0, y: 0 })).toBeCloseTo(diameter / 2, 9);
        expect((Math.atan(tip.x / tip.y) * 180) / Math.PI).toBeCloseTo(angle, 9);
        // It is the same slope that teeth cut so far off centre lean by.
        expect(offCentre(diameter, offset).leanAngle).toBeCloseTo(angle, 9);
      }),
    );
    expect(setOverForFace(30, 0)).toBe(0);
  });
});

describe('speed, feed and time', () => {
  it('speed and turns undo each other', () => {
    fc.assert(
      fc.property(size, size, (diameter, turns) => {
        expect(turnsForSpeed(speedOfRim(turns, diameter), diameter) / turns).toBeCloseTo(1, 12);
      }),
    );
  });

  it('twice the teeth is twice the feed and twice the strikes', () => {
    fc.assert(
      fc.property(size, fc.integer({ min: 1, max: 100 }), share, (turns, teeth, bite) => {
        expect(feedOfWork(turns, 2 * teeth, bite)).toBeCloseTo(2 * feedOfWork(turns, teeth, bite), 6);
        expect(strikesPerSecond(turns, 2 * teeth)).toBeCloseTo(2 * strikesPerSecond(turns, teeth), 6);
      }),
    );
  });

  it('a stack takes no longer than one blank, and each wheel its share', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 20 }),
        share,
        (teeth, blanks, k) => {
          const cut = { teeth, travel: 25, feedPerMin: 40, returnMinutes: k, indexMinutes: 0.2, passes: 2 };
          const [one, many] = [cuttingTime({ ...cut, blanks: 1 }), cuttingTime({ ...cut, blanks })];
          expect(many.minutes).toBe(one.minutes);
          expect(many.minutesPerWheel * blanks).toBeCloseTo(one.minutesPerWheel, 9);
          expect(many.perTooth * teeth).toBeCloseTo(many.minutes, 9);
        },
      ),
    );
  });

  it('each pass and each blank shows the slip of leaving it out', () => {
    const given = { teeth: 60, travel: 25.8, feedPerMin: 40, returnMinutes: 0.2, indexMinutes: 0.3 };
    const { found } = work('cut.wheelTime', { ...given, passes: 3, blanks: 4 });
    // (25.8/40 + 0.5) × 60 × 3 by hand: 0.645 + 0.5 = 1.145; × 180 = 206.1; a quarter, 51.525.
    expect(found.minutes).toBeCloseTo(206.1, 9);
    expect(found.minutesPerWheel).toBeCloseTo(51.525, 9);
    expect(found.perTooth).toBeCloseTo(3.435, 9);
  });
});

describe('a wheel cut off centre', () => {
  const tooth = wheelTooth({ teeth: 30, leaves: 8, module: 1, addendum: 1.38, dedendum: 1.57 });
  const [fine, teeth] = [1e-4, 30];
  const cut = (offset: number) => cutOffCentre(tooth, teeth, offset, fine);
  const area = (outlines: readonly (readonly Point[])[]) =>
    Math.abs(outlines.reduce((sum, outline) => sum + areaD([...outline]), 0));

  it('has the true outline when the cutter is central', () => {
    const outline = wheelOutline({ teeth, leaves: 8, module: 1, addendum: 1.38, dedendum: 1.57 });
    expect(area(cut(0))).toBeCloseTo(areaOf(outline), 1);
    expect(cut(0)).toHaveLength(1);
  });

  it('is the mirror image of one cut as far off the other way', () => {
    const mirror = cut(-0.2).map((outline) => outline.map(({ x, y }) => ({ x: -x, y })));
    const both = [...differenceD(cut(0.2), mirror, FillRule.NonZero, 5)];
    expect(area(both)).toBeLessThan(0.02);
  });

  // The flanks of the space at the top, at the pitch circle: midway between them lies so far round the rim.
  it.each([0.05, 0.2, 0.4])('%f mm off has its spaces round by the lean', (offset) => {
    const radius = 15;
    const angles = cut(offset)
      .flat()
      .filter(({ x, y }) => Math.abs(Math.hypot(x, y) - radius) < 0.25 && y > 0)
      .map(({ x, y }) => (Math.atan2(x, y) * 180) / Math.PI)
      .filter((angle) => Math.abs(angle - offCentre(2 * radius, offset).leanAngle) < 6);
    const lean = offCentre(2 * radius, offset).leanAngle;
    const [left, right] = [
      Math.max(...angles.filter((angle) => angle < lean)),
      Math.min(...angles.filter((angle) => angle > lean)),
    ];
    expect(Math.abs((left + right) / 2 - lean)).toBeLessThan(0.1);
  });
});

it('passes of any size add up to the depth, none deeper than the largest, by both routes', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 10, noNaN: true }), share, (largestPass, part) => {
      const depth = Math.max(0.01, part * 100 * largestPass);
      fc.pre(depth <= 100);
      const passes = work('setup.passes', { depth, largestPass, dialPerDivision: 0.02 }).found
        .passes as number[];
      expect(passes.reduce((sum, pass) => sum + pass, 0)).toBeCloseTo(depth, 9);
      expect(Math.max(...passes)).toBeLessThanOrEqual(largestPass * (1 + 1e-9));
    }),
  );
});
