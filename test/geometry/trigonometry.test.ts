import fc from 'fast-check';
import { expect, it } from 'vitest';
import { distance, turned } from '../../src/geometry/curves/point.js';
import { cutOff, holeCircle } from '../../src/geometry/trigonometry/circle.js';
import { overRollers } from '../../src/geometry/trigonometry/dovetail.js';
import { flatsOnRound } from '../../src/geometry/trigonometry/polygon.js';
import { stackHeight, tailstockOver, taperOf } from '../../src/geometry/trigonometry/slope.js';

/** Numbers spread evenly over a range, which those of fc.double are not: half of them lie near nought. */
const real = (least: number, most: number) =>
  fc.integer({ min: 0, max: 1e9 }).map((share) => least + ((most - least) * share) / 1e9);

const sizes = real(0.1, 1000);
const counts = fc.integer({ min: 3, max: 360 });
const DEGREE = Math.PI / 180;

it('a chord stepped round the circle comes back to where it began', () => {
  fc.assert(
    fc.property(sizes, counts, (diameter, count) => {
      const { chord } = cutOff(diameter, 360 / count);
      let [here, heading] = [{ x: 0, y: 0 }, 0];
      for (let step = 0; step < count; step++) {
        const along = turned({ x: chord, y: 0 }, heading);
        here = { x: here.x + along.x, y: here.y + along.y };
        heading += (2 * Math.PI) / count;
      }
      expect(Math.hypot(here.x, here.y)).toBeLessThan(1e-9 * diameter);
    }),
  );
});

it('chord, arc and sagitta: the chord is shorter, and a radius is what Pythagoras makes of them', () => {
  fc.assert(
    fc.property(sizes, real(0.5, 359), (diameter, angle) => {
      const { chord, arc, sagitta } = cutOff(diameter, angle);
      expect(chord).toBeLessThan(arc);
      expect(sagitta / 2 + chord ** 2 / (8 * sagitta)).toBeCloseTo(diameter / 2, 6);
    }),
  );
});

it('holes stand a chord apart all the way round, about the centre, none below nought from the edges', () => {
  fc.assert(
    fc.property(counts, sizes, real(-360, 360), (count, diameter, start) => {
      const centre = { x: diameter / 2, y: diameter / 2 };
      const holes = holeCircle(count, diameter, start, centre);
      const { chord } = cutOff(diameter, 360 / count);
      holes.forEach((hole, i) => {
        expect(distance(hole, centre)).toBeCloseTo(diameter / 2, 8);
        expect(distance(hole, holes[(i + 1) % count] ?? hole)).toBeCloseTo(chord, 8);
        expect(Math.min(hole.x, hole.y)).toBeGreaterThan(-1e-9);
        expect(hole.angle).toBeGreaterThanOrEqual(0);
        expect(hole.angle).toBeLessThan(360);
      });
      const sum = (along: 'x' | 'y') => holes.reduce((total, hole) => total + hole[along], 0) / count;
      expect(sum('x')).toBeCloseTo(diameter / 2, 8);
      expect(sum('y')).toBeCloseTo(diameter / 2, 8);
    }),
  );
});

it('holes from the other way round are the mirror picture', () => {
  fc.assert(
    fc.property(counts, sizes, fc.integer({ min: -360, max: 360 }), (count, diameter, start) => {
      const origin = { x: 0, y: 0 };
      const [left, right] = [start, -start].map((angle) => holeCircle(count, diameter, angle, origin));
      for (const { x, y } of left ?? [])
        expect(
          (right ?? []).some((hole) => distance(hole, { x, y: -y }) < 1e-9 * diameter),
          `${x}, ${y}`,
        ).toBe(true);
    }),
  );
});

it('holes on an axis stand on it exactly, and a whole turn is nought', () => {
  const holes = holeCircle(4, 50, 360, { x: 0, y: 0 });
  expect(holes).toEqual([
    { x: 25, y: 0, angle: 0 },
    { x: 0, y: 25, angle: 90 },
    { x: -25, y: 0, angle: 180 },
    { x: 0, y: -25, angle: 270 },
  ]);
});

it('a taper turned back: its slope over the length is the change of radius, and both angles are one taper’s', () => {
  fc.assert(
    fc.property(sizes, real(0, 0.99), sizes, (large, share, length) => {
      const small = large * share;
      const taper = taperOf(large, small, length);
      expect(2 * length * Math.tan(taper.halfAngle * DEGREE)).toBeCloseTo(large - small, 6);
      expect(taper.includedAngle).toBeCloseTo(2 * taper.halfAngle, 8);
      expect(taper.taperPerUnit * taper.lengthForOne).toBeCloseTo(1, 9);
      // Part of a taper is the same taper.
      const middle = (large + small) / 2;
      expect(taperOf(middle, small, length / 2).halfAngle).toBeCloseTo(taper.halfAngle, 8);
    }),
  );
});

it('set-over grows with the work, is the taper’s own for work tapered all along, and is never less than exact', () => {
  fc.assert(
    fc.property(sizes, real(0, 0.99), sizes, (large, share, length) => {
      const whole = tailstockOver(large, large * share, length, length);
      const longer = tailstockOver(large, large * share, length, 2 * length);
      expect(whole.setOver).toBeCloseTo((large * (1 - share)) / 2, 6);
      expect(longer.setOver).toBeCloseTo(2 * whole.setOver, 6);
      expect(whole.alongWork).toBeLessThanOrEqual(whole.setOver);
    }),
  );
});

it('a sine bar on its stack stands at the angle', () => {
  fc.assert(
    fc.property(real(0.01, 88), sizes, (angle, centres) => {
      expect(Math.asin(stackHeight(angle, centres) / centres) / DEGREE).toBeCloseTo(angle, 8);
    }),
  );
});

it('a male dovetail in its own groove: the rollers’ measurements tell of the same corners', () => {
  fc.assert(
    fc.property(real(30, 85), real(2, 10), real(50, 100), (angle, depth, narrow) => {
      const slope = depth / Math.tan(angle * DEGREE);
      const male = overRollers('male', narrow + 2 * slope, angle, depth, depth);
      const female = overRollers('female', narrow, angle, depth, depth);
      expect(male.cornerWidth).toBeCloseTo(narrow, 8);
      expect(female.cornerWidth).toBeCloseTo(narrow + 2 * slope, 8);
      // What the rollers add outside the one, they take off inside the other.
      expect(male.measurement - male.cornerWidth).toBeCloseTo(female.cornerWidth - female.measurement, 8);
      expect(male.touch).toBeCloseTo((depth / 2) * (1 + Math.cos(angle * DEGREE)), 8);
      expect(female.touch).toBeCloseTo(male.touch, 8);
    }),
  );
});

it('flats: more sides are nearer the round, and opposite flats take both depths off it', () => {
  for (let sides = 3; sides < 100; sides++) {
    const flats = flatsOnRound(10, sides);
    expect(flatsOnRound(10, sides + 1).depthOfFlat).toBeLessThan(flats.depthOfFlat);
    expect(10 - flats.acrossFlats).toBeCloseTo((sides % 2 === 0 ? 2 : 1) * flats.depthOfFlat, 12);
    expect(Math.hypot(flats.flatWidth / 2, 5 - flats.depthOfFlat)).toBeCloseTo(5, 12);
  }
});
