import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { movementForAngle } from '../../src/geometry/dividing/angle.js';
import { BestFew } from '../../src/geometry/dividing/best-few.js';
import { closingOf } from '../../src/geometry/dividing/closing.js';
import {
  type CompoundSetting,
  compoundSettings,
  simplestCompound,
} from '../../src/geometry/dividing/compound.js';
import { diagnoseCount, diagnoseGap } from '../../src/geometry/dividing/diagnosis.js';
import { differentialSettings, LARGEST_RATIO } from '../../src/geometry/dividing/differential.js';
import { directSettings, notchSequence } from '../../src/geometry/dividing/direct.js';
import {
  type GearTrain,
  prepareGears,
  ratioOf,
  teethOf,
  wheelsOf,
} from '../../src/geometry/dividing/gears.js';
import { simpleIndexing } from '../../src/geometry/dividing/indexing.js';
import { nearestSettings } from '../../src/geometry/dividing/nearest.js';
import { plateErrorAtWheel } from '../../src/geometry/dividing/plate-error.js';
import { fraction } from '../../src/geometry/fractions.js';

const whole = (min: number, max: number) => fc.integer({ min, max });
const circlesOf = (most: number, maxLength = 5) =>
  fc.uniqueArray(whole(2, most), { minLength: 1, maxLength });

it('keeps the best few as sorting them all would', () => {
  fc.assert(
    fc.property(fc.array(whole(0, 50)), whole(1, 9), (values, most) => {
      const best = new BestFew<number>(most, (a, b) => a - b);
      for (const value of values) best.add(value);
      expect(best.count).toBe(values.length);
      expect(best.few).toEqual([...values].sort((a, b) => a - b).slice(0, most));
    }),
  );
});

describe('compound indexing', () => {
  /** Every setting in normal form, by trying all there are. */
  function byBruteForce(turn: Fraction, plates: readonly (readonly number[])[]): CompoundSetting[] {
    const all: CompoundSetting[] = [];
    plates.forEach((circles, place) => {
      for (const circle1 of circles)
        for (const circle2 of circles)
          for (const sense of ['forward', 'back'] as const) {
            if (sense === 'forward' ? circle1 >= circle2 : circle1 === circle2) continue;
            for (let holes1 = 1; holes1 < circle1; holes1++)
              for (let holes2 = 1; holes2 < circle2; holes2++) {
                const moves = new Fraction(holes1, circle1);
                const both = sense === 'forward' ? moves.add(holes2, circle2) : moves.sub(holes2, circle2);
                const turns = turn.sub(both);
                if (turns.d === 1n && turns.s >= 0n)
                  all.push({
                    plate: place + 1,
                    turns: turns.valueOf(),
                    holes1,
                    circle1,
                    sense,
                    holes2,
                    circle2,
                  });
              }
          }
    });
    return all.sort(simplestCompound);
  }

  it('misses nothing possible and claims nothing impossible, on small plates', () => {
    fc.assert(
      fc.property(
        whole(2, 130),
        whole(1, 90),
        fc.array(circlesOf(16, 4), { minLength: 1, maxLength: 2 }),
        (divisions, ratio, plates) => {
          const { count, settings } = compoundSettings(fraction(ratio, divisions), plates);
          const all = byBruteForce(new Fraction(ratio, divisions), plates);
          expect(settings).toEqual(all);
          expect(count).toBe(all.length);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('lists no setting twice, the simplest first, and a short list is the head of the long one', () => {
    const plates = [
      [15, 16, 17, 18, 19, 20],
      [24, 30, 36, 42],
    ];
    for (const divisions of [2, 12, 48, 51, 96, 120]) {
      const { count, settings } = compoundSettings(fraction(40, divisions), plates);
      expect(new Set(settings.map((one) => JSON.stringify(one))).size).toBe(count);
      expect([...settings].sort(simplestCompound)).toEqual(settings);
      expect(compoundSettings(fraction(40, divisions), plates, 5)).toEqual({
        count,
        settings: settings.slice(0, 5),
      });
    }
  });

  it('needs every factor of the denominator in its two circles', () => {
    expect(compoundSettings(fraction(40, 53), [[15, 16, 17, 18, 19, 20]]).count).toBe(0);
    // 3 × 17: one circle has the 3, the other the 17, on one plate only.
    expect(
      compoundSettings(fraction(40, 51), [
        [15, 16],
        [17, 19],
      ]).count,
    ).toBe(0);
    expect(compoundSettings(fraction(40, 51), [[15, 17]]).count).toBeGreaterThan(0);
  });

  it('several divisions at a time make no further count possible', () => {
    const plate = [15, 16, 17, 18, 19, 20];
    const reached = (divisions: number, atOnce: number): boolean =>
      compoundSettings(fraction(40 * atOnce, divisions), [plate]).count > 0 ||
      simpleIndexing(divisions, 40 * atOnce, plate).settings.length > 0;
    for (let divisions = 51; divisions <= 130; divisions++)
      for (const atOnce of [3, 5, 7])
        if (divisions % atOnce !== 0) expect(reached(divisions, atOnce)).toBe(reached(divisions, 1));
  });
});

describe('change gears', () => {
  /** Every train of two or four wheels that are owned. */
  function allTrains(gears: readonly number[]): GearTrain[] {
    const places = gears.map((_, i) => i);
    const trains: GearTrain[] = [];
    for (const i of places)
      for (const j of places) {
        if (i === j) continue;
        trains.push({ drivers: [gears[i] ?? 0], driven: [gears[j] ?? 0] });
        for (const k of places)
          for (const l of places)
            if (new Set([i, j, k, l]).size === 4)
              trains.push({
                drivers: [gears[i] ?? 0, gears[k] ?? 0],
                driven: [gears[j] ?? 0, gears[l] ?? 0],
              });
      }
    return trains;
  }

  it('gives the simplest train of every ratio there is, and none of a ratio there is not', () => {
    fc.assert(
      fc.property(
        fc.array(whole(10, 40), { minLength: 2, maxLength: 6 }),
        whole(1, 60),
        whole(1, 60),
        (gears, top, bottom) => {
          const set = prepareGears(gears);
          const trains = allTrains(gears);
          for (const ratio of [fraction(top, bottom), ...trains.slice(0, 20).map(ratioOf)]) {
            const fits = trains.filter((train) => {
              const { numerator, denominator } = ratioOf(train);
              return numerator === ratio.numerator && denominator === ratio.denominator;
            });
            const least = fits.sort(
              (a, b) => wheelsOf(a).length - wheelsOf(b).length || teethOf(a) - teethOf(b),
            )[0];
            const found = set.trainFor(ratio);
            expect(found === undefined).toBe(least === undefined);
            if (!found || !least) continue;
            expect(ratioOf(found)).toEqual(ratio);
            expect([wheelsOf(found).length, teethOf(found)]).toEqual([
              wheelsOf(least).length,
              teethOf(least),
            ]);
            const rack = [...gears];
            for (const wheel of wheelsOf(found)) {
              expect(rack).toContain(wheel);
              rack.splice(rack.indexOf(wheel), 1);
            }
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it('asks for no ratio beyond its wheels', () =>
    expect(prepareGears([20, 40]).trainFor({ numerator: 2 ** 40, denominator: 3 })).toBeUndefined());
});

describe('differential indexing', () => {
  it('has every movement that the gears put right, and each comes out', () => {
    fc.assert(
      fc.property(
        whole(2, 200),
        whole(1, 90),
        circlesOf(50),
        fc.array(whole(16, 100), { minLength: 2, maxLength: 8 }),
        (divisions, ratio, circles, gears) => {
          const set = prepareGears(gears);
          const { count, settings } = differentialSettings(divisions, ratio, circles, set);
          expect(count).toBe(settings.length);
          const found = settings.map(({ circle, turns, holes }) =>
            holes === 0 ? `${turns}` : `${circle} ${turns} ${holes}`,
          );
          const wanted = new Set<string>();
          for (const circle of circles)
            for (let spaces = 1; spaces <= ratio * circle + LARGEST_RATIO * circle; spaces++) {
              const plate = new Fraction(ratio).sub(new Fraction(divisions).mul(spaces, circle));
              if (plate.n === 0n || plate.abs().compare(LARGEST_RATIO) > 0) continue;
              if (!set.trainFor({ numerator: Number(plate.n), denominator: Number(plate.d) })) continue;
              const [turns, holes] = [Math.floor(spaces / circle), spaces % circle];
              wanted.add(holes === 0 ? `${turns}` : `${circle} ${turns} ${holes}`);
            }
          expect([...found].sort()).toEqual([...wanted].sort());
          for (const { turns, holes, circle, gearRatio, train, approximate } of settings) {
            const crank = new Fraction(turns).add(holes, circle);
            const gears = ratioOf(train);
            const plate = new Fraction(gears.numerator, gears.denominator).mul(
              Math.sign(gearRatio.numerator),
            );
            expect(crank.mul(divisions).add(plate).equals(ratio)).toBe(true);
            const count = new Fraction(approximate.numerator, approximate.denominator);
            expect(crank.mul(count).equals(ratio)).toBe(true);
            // The approximate count is the larger one when the plate turns with the crank.
            expect(count.compare(divisions) > 0).toBe(gearRatio.numerator > 0);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the nearest movement', () => {
  it('is nearer than its neighbours on every circle, and the circles stand in order', () => {
    fc.assert(
      fc.property(whole(2, 2000), whole(1, 120), circlesOf(100, 8), (divisions, ratio, circles) => {
        const settings = nearestSettings(divisions, ratio, circles, 50);
        const error = (spaces: number, circle: number) =>
          new Fraction(spaces, circle).sub(ratio, divisions).abs();
        const errors = settings.map(({ turns, holes, circle }) => {
          const spaces = turns * circle + holes;
          expect(spaces).toBeGreaterThan(0);
          const own = error(spaces, circle);
          expect(own.compare(error(spaces + 1, circle))).toBeLessThanOrEqual(0);
          if (spaces > 1) expect(own.compare(error(spaces - 1, circle))).toBeLessThanOrEqual(0);
          return own;
        });
        for (const [i, one] of errors.entries())
          if (i > 0) expect(one.compare(errors[i - 1] ?? 0)).toBeGreaterThanOrEqual(0);
        // Nought exactly where simple indexing serves.
        const exact = settings.filter((one) => one.stepErrorArcSeconds === 0).map((one) => one.circle);
        const serve = simpleIndexing(divisions, ratio, circles).settings.map((one) => one.circle);
        expect(exact).toEqual([...serve].sort((a, b) => a - b));
      }),
    );
  });

  it('for an angle agrees with exact fractions', () => {
    fc.assert(
      fc.property(
        whole(1000, 1_296_000_000),
        whole(1, 1000),
        circlesOf(1000, 6),
        (thousandths, ratio, circles) => {
          const { turns, holes, circle, exact, errorArcSeconds } = movementForAngle(
            { top: BigInt(thousandths), bottom: 1_296_000_000n },
            ratio,
            circles,
          );
          const wanted = new Fraction(thousandths, 1000);
          const moved = (spaces: number, on: number) => new Fraction(1_296_000).mul(spaces, ratio * on);
          const off = moved(turns * circle + holes, circle).sub(wanted);
          expect(errorArcSeconds).toBeCloseTo(off.valueOf(), 9);
          expect(exact).toBe(off.n === 0n);
          for (const other of circles) {
            const about = wanted.mul(ratio * other, 1_296_000).floor();
            for (const spaces of [Number(about.n), Number(about.n) + 1])
              if (spaces > 0)
                expect(off.abs().compare(moved(spaces, other).sub(wanted).abs())).toBeLessThanOrEqual(0);
          }
        },
      ),
    );
  });
});

describe('diagnosis', () => {
  /** Every move of a whole-number indexing on a circle, some spaces out each time, or once. */
  const indexed = fc
    .record({ divisions: whole(2, 200), ratio: whole(2, 120), circle: whole(2, 66) })
    .filter(({ divisions, ratio, circle }) => (ratio * circle) % divisions === 0)
    .map((one) => ({
      ...one,
      full: one.ratio * one.circle,
      intended: (one.ratio * one.circle) / one.divisions,
    }));

  it('finds a slip made at every move, from the gap it leaves', () => {
    fc.assert(
      fc.property(indexed, whole(-3, 3), ({ divisions, full, intended }, slip) => {
        fc.pre(intended + slip > 0);
        const moved = intended + slip;
        const [first] = diagnoseGap({ divisions, full, intended }, full - divisions * moved);
        expect(first).toMatchObject({ holesMoved: moved, onceSpaces: 0, teethCut: Math.floor(full / moved) });
      }),
    );
  });

  it('finds a slip made once, from the gap it leaves', () => {
    fc.assert(
      fc.property(indexed, whole(-5, 5), ({ divisions, full, intended }, slip) => {
        fc.pre(Math.abs(slip) < divisions);
        const [first] = diagnoseGap({ divisions, full, intended }, -slip);
        expect(first).toMatchObject({ holesMoved: intended, onceSpaces: slip });
      }),
    );
  });

  it('finds a slip made at every move, from the teeth it makes', () => {
    fc.assert(
      fc.property(indexed, whole(-1, 1), ({ divisions, full, intended }, slip) => {
        const moved = intended + slip;
        fc.pre(moved > 0 && full / moved >= 2);
        const readings = diagnoseCount({ divisions, full, intended }, Math.floor(full / moved));
        expect(readings.map((one) => one.holesMoved)).toContain(moved);
        // Where no other move makes as many, it is the first reading.
        const same = [moved - 1, moved + 1].filter(
          (k) => k > 0 && Math.floor(full / k) === Math.floor(full / moved),
        );
        if (same.length === 0) expect(readings[0]?.holesMoved).toBe(moved);
      }),
    );
  });

  it('has no reading of a count that no steady move makes', () =>
    expect(diagnoseCount({ divisions: 60, full: 720, intended: 12 }, 62)).toEqual([]));
});

describe('errors', () => {
  it('the teeth and spaces of a wheel that does not overlap make up its circumference', () => {
    fc.assert(
      fc.property(whole(3, 300), fc.double({ min: -0.2, max: 0.2, noNaN: true }), (divisions, share) => {
        // The last tooth still stands while all steps together are out by less than half a pitch.
        const stepError = (share * 1_296_000) / divisions / divisions;
        const { toothThickness, lastToothThickness } = closingOf(divisions, stepError, 50);
        const space = (Math.PI * 50) / divisions / 2;
        const round = (divisions - 1) * toothThickness + lastToothThickness + divisions * space;
        expect(round).toBeCloseTo(Math.PI * 50, 9);
      }),
    );
  });

  it('a longer step makes the last tooth thinner, until it is gone', () => {
    const last = (error: number) => closingOf(60, error, 48).lastToothThickness;
    expect(last(-30)).toBeGreaterThan(last(0));
    expect(last(0)).toBeCloseTo((Math.PI * 48) / 120, 12);
    expect(last(30)).toBeLessThan(last(0));
    expect(last(1800)).toBe(0);
  });

  it('a hole’s error is as the radii, and the worm divides it', () => {
    const length = fc.double({ min: 1, max: 500, noNaN: true });
    fc.assert(
      fc.property(length, length, whole(1, 200), (plate, wheel, ratio) => {
        const direct = plateErrorAtWheel(plate / 50, plate, 1, wheel);
        const geared = plateErrorAtWheel(plate / 50, plate, ratio, wheel);
        expect(direct.atRim / (plate / 50)).toBeCloseTo(wheel / plate, 9);
        expect(direct.angleArcSeconds / geared.angleArcSeconds).toBeCloseTo(ratio, 9);
        // The same shape at twice the size is out by the same angle.
        expect(plateErrorAtWheel(plate / 25, 2 * plate, ratio, 2 * wheel).angleArcSeconds).toBeCloseTo(
          geared.angleArcSeconds,
          9,
        );
      }),
    );
  });
});

it('a direct plate’s stops are all different, and one more step closes it', () => {
  fc.assert(
    fc.property(whole(2, 400), circlesOf(400, 8), (divisions, plates) => {
      for (const { plate, step } of directSettings(divisions, plates)) {
        const stops = notchSequence(divisions, step);
        expect(new Set(stops.map((notch) => notch % plate)).size).toBe(divisions);
        expect(((stops.at(-1) ?? 0) + step) % plate).toBe(0);
      }
    }),
  );
});
