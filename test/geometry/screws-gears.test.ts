import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, it } from 'vitest';
import { type GearTrain, gearTrains } from '../../src/geometry/screws/change-wheels.js';
import { gearRatio } from '../../src/geometry/screws/lead.js';
import { everyTrain, putBack, ratioOfTurns } from '../../src/handbook/screws/gear-trial.js';

/** A few wheels: any, or from so few sizes that many come twice and many trains serve. */
const wheels = fc.oneof(
  fc.array(fc.integer({ min: 10, max: 40 }), { minLength: 1, maxLength: 7 }),
  fc.array(fc.constantFrom(20, 30, 40, 60), { minLength: 2, maxLength: 7 }),
);
const anyRatio = fc
  .oneof(
    fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 })),
    fc.constantFrom(
      ...([
        [1, 1],
        [1, 2],
        [2, 1],
        [2, 3],
        [3, 2],
        [3, 1],
      ] as const),
    ),
  )
  .map(([top, bottom]) => new Fraction(top, bottom))
  .map((ratio) => ({ numerator: Number(ratio.n), denominator: Number(ratio.d) }));
const tolerance = fc.constantFrom(0, 0, 100, 5000, 20_000);

const down = (list: readonly number[]): number[] => [...list].sort((a, b) => b - a);
const name = ({ drivers, driven }: { drivers: readonly number[]; driven: readonly number[] }): string =>
  `${down(drivers)}|${down(driven)}`;

/** Every ordered choice of two and of four wheels off the bench, by fraction.js; the names of the trains that serve. */
function byHand(
  set: readonly number[],
  ratio: { numerator: number; denominator: number },
  ppm: number,
): Set<string> {
  const wanted = new Fraction(ratio.numerator, ratio.denominator);
  const serve = new Set<string>();
  const choose = (taken: readonly number[], size: number): void => {
    if (taken.length < size) {
      set.forEach((_, i) => taken.includes(i) || choose([...taken, i], size));
      return;
    }
    const [drivers, driven] = [taken.slice(0, size / 2), taken.slice(size / 2)].map((places) =>
      places.map((i) => set[i] ?? 0),
    ) as [number[], number[]];
    const product = (list: number[]) => list.reduce((so, one) => so.mul(one), new Fraction(1));
    const error = product(drivers).div(product(driven)).div(wanted).sub(1).abs();
    if (error.compare(new Fraction(ppm, 1_000_000)) <= 0) serve.add(name({ drivers, driven }));
  };
  choose([], 2);
  choose([], 4);
  return serve;
}

it('finds every simple and compound train there is, and none that is not, each once', () => {
  fc.assert(
    fc.property(wheels, anyRatio, tolerance, (set, ratio, ppm) => {
      const { count, trains } = gearTrains({ ratio, wheels: set, tolerance: ppm }, 10_000);
      expect(trains).toHaveLength(count);
      expect(new Set(trains.map(name))).toEqual(byHand(set, ratio, ppm));
      expect(new Set(trains.map(name)).size).toBe(count);
    }),
    { numRuns: 60 },
  );
});

it('is the trial of every two and every four wheels by another order', () => {
  fc.assert(
    fc.property(wheels, anyRatio, tolerance, (set, { numerator, denominator }, ppm) => {
      const ratio = { top: numerator, bottom: denominator };
      const { count, trains } = gearTrains(
        { ratio: { numerator, denominator }, wheels: set, tolerance: ppm },
        25,
      );
      const trial = everyTrain(ratio, set, ppm, 25);
      expect(trial.count).toBe(count);
      expect(trial.best).toEqual(trains.map(({ drivers, driven }) => putBack(ratio, drivers, driven)));
    }),
    { numRuns: 500 },
  );
});

it('gives the best first: smallest error, then fewest wheels, then fewest teeth; each side largest first', () => {
  fc.assert(
    fc.property(wheels, anyRatio, (set, ratio) => {
      const { trains } = gearTrains({ ratio, wheels: set, tolerance: 20_000 }, 500);
      const key = ({ error, drivers, driven }: GearTrain): number[] => [
        Math.abs(error),
        2 * drivers.length,
        [...drivers, ...driven].reduce((so, one) => so + one, 0),
      ];
      trains.slice(1).forEach((train, i) => {
        const [one, two] = [key(trains[i] as GearTrain), key(train)];
        const place = one.findIndex((part, k) => part !== two[k]);
        expect(place < 0 || (one[place] ?? 0) < (two[place] ?? 0)).toBe(true);
      });
      for (const { drivers, driven } of trains)
        for (const side of [drivers, driven]) expect(side).toEqual(down(side));
    }),
  );
});

it('the shortest list is the head of the longest', () => {
  const set = [20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 127];
  const wanted = { ratio: { numerator: 1, denominator: 3 }, wheels: set, tolerance: 20_000 };
  const long = gearTrains(wanted, 10_000);
  for (const most of [1, 5, 40])
    expect(gearTrains(wanted, most)).toEqual({ count: long.count, trains: long.trains.slice(0, most) });
});

it('uses a wheel as often as it is owned, and no more', () => {
  const same = { numerator: 1, denominator: 1 };
  expect(gearTrains({ ratio: same, wheels: [40], tolerance: 0 }, 9).count).toBe(0);
  expect(gearTrains({ ratio: same, wheels: [40, 40], tolerance: 0 }, 9).trains).toEqual([
    { drivers: [40], driven: [40], error: 0 },
  ]);
  expect(gearTrains({ ratio: same, wheels: [40, 40, 40], tolerance: 0 }, 9).count).toBe(1);
  expect(gearTrains({ ratio: same, wheels: [40, 40, 40, 40], tolerance: 0 }, 9).count).toBe(2);
});

it('turning the ratio over turns every train over', () => {
  fc.assert(
    fc.property(wheels, anyRatio, (set, ratio) => {
      const over = { numerator: ratio.denominator, denominator: ratio.numerator };
      const turned = gearTrains({ ratio: over, wheels: set, tolerance: 0 }, 1000).trains.map(
        ({ drivers, driven }) => name({ drivers: driven, driven: drivers }),
      );
      const straight = gearTrains({ ratio, wheels: set, tolerance: 0 }, 1000).trains.map(name);
      expect(new Set(turned)).toEqual(new Set(straight));
    }),
  );
});

it('the ratio is exact for millimetres and inches either way, as fraction.js and 127ths of an inch have it', () => {
  const thread = fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 100 }), fc.boolean());
  fc.assert(
    fc.property(thread, thread, (cut, lead) => {
      const exact = ([top, bottom, perInch]: readonly [number, number, boolean]) =>
        perInch ? new Fraction(127, 5).mul(bottom).div(top) : new Fraction(top, bottom);
      const read = ([top, bottom, perInch]: readonly [number, number, boolean]) => {
        const { n, d } = new Fraction(top, bottom);
        const size = { numerator: Number(n), denominator: Number(d) };
        return perInch ? { tpi: size } : { pitch: size };
      };
      const told = ([numerator, denominator, perInch]: readonly [number, number, boolean]) => ({
        numerator,
        denominator,
        perInch,
      });
      const wanted = exact(cut).div(exact(lead));
      const ours = gearRatio(read(cut), read(lead));
      expect([BigInt(ours.numerator), BigInt(ours.denominator)]).toEqual([wanted.n, wanted.d]);
      const theirs = ratioOfTurns(told(cut), told(lead));
      expect([BigInt(theirs.top), BigInt(theirs.bottom)]).toEqual([wanted.n, wanted.d]);
    }),
  );
});
