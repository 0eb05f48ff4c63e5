import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { findTrains, type Train, type TrainBounds } from '../../src/geometry/trains/find.js';
import type { MotionWork } from '../../src/geometry/trains/motion-work.js';
import { rowsThatHold } from '../../src/handbook/trains/put-back.js';
import { cheapestTotals, totalsOf, trainsAtEachTotal } from '../../src/handbook/trains/table.js';
import { work } from '../../src/index.js';

const found = (name: string, given: Record<string, unknown>) => work(name, given).found;

const pairs = fc.array(fc.tuple(fc.integer({ min: 24, max: 144 }), fc.integer({ min: 6, max: 24 })), {
  minLength: 1,
  maxLength: 4,
});
const trainOf = (some: readonly (readonly [number, number])[]) => ({
  wheels: some.map(([wheel]) => wheel),
  pinions: some.map(([, pinion]) => pinion),
});

describe('a train’s ratio', () => {
  it('agrees with a library of exact fractions, in whatever order the pairs stand', () => {
    fc.assert(
      fc.property(pairs, (some) => {
        const { numerator, denominator, ratio } = found('train.ratio', trainOf(some));
        const theirs = some.reduce((so, [wheel, pinion]) => so.mul(wheel, pinion), new Fraction(1));
        expect([numerator, denominator]).toEqual([Number(theirs.n), Number(theirs.d)]);
        expect(found('train.ratio', trainOf([...some].reverse())).ratio).toBe(ratio);
      }),
    );
  });

  it('turned end for end is one over it, and two trains in a row multiply', () => {
    fc.assert(
      fc.property(pairs, pairs, (first, second) => {
        const [a, b] = [trainOf(first), trainOf(second)];
        const one = found('train.ratio', a);
        const back = found('train.ratio', { wheels: a.pinions, pinions: a.wheels });
        expect([back.numerator, back.denominator]).toEqual([one.denominator, one.numerator]);
        const both = { wheels: [...a.wheels, ...b.wheels], pinions: [...a.pinions, ...b.pinions] };
        if (both.wheels.length > 6) return;
        const product = new Fraction(one.numerator as number, one.denominator as number).mul(
          found('train.ratio', b).numerator as number,
          found('train.ratio', b).denominator as number,
        );
        const whole = found('train.ratio', both);
        expect([whole.numerator, whole.denominator]).toEqual([Number(product.n), Number(product.d)]);
      }),
    );
  });
});

it('a train is refused unless every wheel has its pinion, and its products can be held exactly', () => {
  const large = [997, 991, 983, 977, 971, 967];
  for (const [name, rest] of [
    ['train.ratio', {}],
    ['train.beats', { escapeTeeth: 30 }],
  ] as const) {
    expect(() => work(name, { wheels: [60, 56], pinions: [8], ...rest })).toThrow(/as there are wheels, 2$/);
    expect(() => work(name, { wheels: large, pinions: [7, 7, 7, 7, 7, 7], ...rest })).toThrow(
      /multiply to less/,
    );
    expect(() => work(name, { wheels: [7, 7, 7, 7, 7, 7], pinions: large, ...rest })).toThrow(
      /multiply to less/,
    );
  }
});

describe('the missing count', () => {
  it('comes back, wherever in a train it is left out', () => {
    const escape = fc.integer({ min: 15, max: 60 });
    fc.assert(
      fc.property(pairs, escape, fc.nat(), fc.boolean(), (some, escapeTeeth, pick, wheel) => {
        const train = trainOf(some);
        // Beats must be whole: the first wheel is made large enough to divide by every pinion.
        const wheels = [...train.wheels, train.pinions.reduce((a, b) => a * b)];
        const pinions = [...train.pinions, 8];
        if ((wheels.at(-1) ?? 0) > 1000) return;
        const beats = found('train.beats', { wheels, pinions, escapeTeeth }).beatsPerHour as number;
        if (!Number.isInteger(beats) || beats > 1e6) return;
        const place = pick % wheels.length;
        const side = wheel ? wheels : pinions;
        const asked = side.map((count, i) => (i === place ? '?' : count));
        const given = {
          beatsPerHour: beats,
          escapeTeeth,
          wheels,
          pinions,
          [wheel ? 'wheels' : 'pinions']: asked,
        };
        expect(found('train.missing', given)).toMatchObject({ teeth: side[place], possible: true });
      }),
    );
  });

  it('is refused unless exactly one is asked for, and impossible when no whole count serves', () => {
    const train = { beatsPerHour: 3600, escapeTeeth: 30 };
    for (const [wheels, pinions] of [
      ['60,56', '8,7'],
      ['?,56', '?,7'],
      ['?,?', '8,7'],
    ])
      expect(() => work('train.missing', { ...train, wheels, pinions })).toThrow(/give one \? in all/);
    const lines = (given: Record<string, unknown>) =>
      work('train.missing', { ...train, ...given }).working.join();
    expect(lines({ wheels: '60,?', pinions: '8,8' })).toContain('The missing wheel has 64 teeth.');
    expect(lines({ wheels: '64,60', pinions: '?,8' })).toContain('The missing pinion has 8 leaves.');
    expect(lines({ wheels: '?', pinions: 8 })).toContain('No wheel is known: count it as 1.');
    const none = found('train.missing', { ...train, beatsPerHour: 3700, wheels: '?', pinions: 8 });
    expect(none).toMatchObject({ teeth: null, possible: false });
    expect(none.reason).toContain('1480/3');
    expect(found('train.missing', { ...train, wheels: '?,60', pinions: '200,200' }).reason).toContain(
      '2 to 1000',
    );
  });
});

/** Every train within bounds, by trying each wheel against each pinion, pair by pair, with a library's fractions. */
function byBruteForce(given: {
  ratio: string;
  stages: number;
  minLeaves: number;
  maxLeaves: number;
  minTeeth: number;
  maxTeeth: number;
  tolerance: number;
}): Set<string> {
  const wanted = new Fraction(given.ratio);
  const names = new Set<string>();
  const build = (wheels: number[], pinions: number[], so: Fraction): void => {
    if (wheels.length === given.stages) {
      const off = so.div(wanted).sub(1).mul(1_000_000).abs();
      const rising = (counts: number[]) => [...counts].sort((a, b) => b - a).join();
      if (off.compare(given.tolerance) <= 0) names.add(`${rising(wheels)}/${rising(pinions)}`);
      return;
    }
    for (let wheel = given.maxTeeth; wheel >= given.minTeeth; wheel--)
      for (let pinion = given.maxLeaves; pinion >= given.minLeaves; pinion--)
        build([...wheels, wheel], [...pinions, pinion], so.mul(wheel, pinion));
  };
  build([], [], new Fraction(1));
  return names;
}

const named = ({ wheels, pinions }: Train): string => `${wheels}/${pinions}`;
const teethIn = ({ wheels, pinions }: Train): number => [...wheels, ...pinions].reduce((a, b) => a + b);

describe('every train of a ratio', () => {
  const bounds = fc.record({
    stages: fc.integer({ min: 1, max: 3 }),
    minLeaves: fc.integer({ min: 4, max: 8 }),
    minTeeth: fc.integer({ min: 6, max: 40 }),
    leaves: fc.nat(3),
    teeth: fc.nat(3),
    pick: fc.array(fc.nat(), { minLength: 6, maxLength: 6 }),
    tolerance: fc.constantFrom(0, 0, 1, 100, 1000),
  });

  it('misses none, claims none, and lists none twice: held against brute force', () => {
    fc.assert(
      fc.property(bounds, ({ stages, minLeaves, minTeeth, leaves, teeth, pick, tolerance }) => {
        // A ratio that some train within the bounds has.
        const count = (least: number, width: number, i: number) => least + ((pick[i] ?? 0) % (width + 1));
        let ratio = new Fraction(1);
        for (let pair = 0; pair < stages; pair++)
          ratio = ratio.mul(count(minTeeth, teeth, pair), count(minLeaves, leaves, pair + 3));
        const given = {
          ratio: ratio.toFraction(),
          stages,
          minLeaves,
          maxLeaves: minLeaves + leaves,
          minTeeth,
          maxTeeth: minTeeth + teeth,
          tolerance,
        };
        const { trains, count: counted } = found('train.find', given) as { trains: Train[]; count: number };
        expect(counted).toBe(trains.length);
        expect(trains.map(named).sort()).toEqual([...byBruteForce(given)].sort());
      }),
      { numRuns: 150 },
    );
  });

  it.each([
    ['20', 0],
    ['24.99', 1000],
  ])('a larger search, ratio %s within %d parts per million, against brute force', (ratio, tolerance) => {
    const given = { ratio, stages: 2, minLeaves: 6, maxLeaves: 9, minTeeth: 24, maxTeeth: 50, tolerance };
    const names = (found('train.find', given).trains as Train[]).map(named);
    expect(names.length).toBeGreaterThan(5);
    expect(names.sort()).toEqual([...byBruteForce(given)].sort());
  });

  it('lists the cheapest when there are too many to list, and counts them all', () => {
    const given = { ratio: 60, stages: 3 };
    const { trains, count } = found('train.find', given) as { trains: Train[]; count: number };
    const all = findTrains(
      {
        ratio: { numerator: 60, denominator: 1 },
        stages: 3,
        minLeaves: 6,
        maxLeaves: 16,
        minTeeth: 24,
        maxTeeth: 120,
        tolerance: 0,
      },
      Number.POSITIVE_INFINITY,
    ).trains;
    expect(all.length).toBe(count);
    expect(trains).toEqual(all.slice(0, 500));
    expect(trains.map(teethIn)).toEqual(
      all
        .map(teethIn)
        .sort((a, b) => a - b)
        .slice(0, 500),
    );
  });

  it('loses none when the bounds are widened or the tolerance eased', () => {
    const names = (given: Record<string, unknown>) =>
      new Set(
        (found('train.find', { ratio: 30, stages: 2, maxTeeth: 80, ...given }).trains as Train[]).map(named),
      );
    const narrow = names({ minLeaves: 6, maxLeaves: 10 });
    expect(narrow.size).toBeGreaterThan(5);
    for (const wide of [
      { minLeaves: 5, maxLeaves: 10 },
      { minLeaves: 6, maxLeaves: 11 },
      { minLeaves: 6, maxLeaves: 10, tolerance: 200 },
    ])
      expect([...narrow].filter((name) => !names(wide).has(name))).toEqual([]);
  });

  it('shows the ratio as it was typed', () => {
    const first = (ratio: unknown) => work('train.find', { ratio, stages: 3, tolerance: 10 }).working[0];
    expect(first('365.2422')).toContain('365.2422 times');
    expect(first('7.5')).toContain('7.5 times');
    expect(first('5/7')).toContain('5/7 times');
    expect(first('1/3')).toContain('1/3 times');
  });

  it('says why there is none', () => {
    const reason = (given: Record<string, unknown>) => found('train.find', given).reason;
    expect(reason({ ratio: '127/10', stages: 2 })).toBe(
      'the prime 127 of the ratio goes into no wheel from 24 to 120: allow an error with tolerance, such as 10',
    );
    expect(reason({ ratio: '60/17', stages: 2 })).toBe(
      'the prime 17 of the ratio goes into no pinion from 6 to 16: allow an error with tolerance, such as 10',
    );
    expect(reason({ ratio: 500, stages: 2 })).toContain('come to 400 at most');
    expect(reason({ ratio: '1/500', stages: 2 })).toContain('at least');
    expect(reason({ ratio: 29.530588, stages: 3, tolerance: 1 })).toContain('in 3 stages');
  });

  it('refuses a search that would take long, and bounds that are the wrong way round', () => {
    expect(() => work('train.find', { ratio: 720, stages: 4 })).toThrow(
      /^stages: 4 is not accepted; give .*minTeeth and maxTeeth.*four stages need a narrower range, such as 24 to 68$/,
    );
    expect(() => work('train.find', { ratio: 720, stages: 4, maxLeaves: 60 })).toThrow(InputErrorLine);
    expect(() => work('train.find', { ratio: 60, stages: 2, minLeaves: 17 })).toThrow(/maxLeaves: 16/);
    expect(() => work('train.find', { ratio: 60, stages: 2, minTeeth: 121 })).toThrow(/maxTeeth: 120/);
    expect(() => work('train.find', { ratio: '999999.999999999', stages: 2 })).toThrow(/12 figures/);
  });
});

describe('the second route to a list of trains', () => {
  const limits: TrainBounds = {
    ratio: { numerator: 60, denominator: 1 },
    stages: 2,
    minLeaves: 6,
    maxLeaves: 12,
    minTeeth: 24,
    maxTeeth: 100,
    tolerance: 0,
  };
  const { trains } = findTrains(limits, 500);
  const [first, second] = trains as [Train, Train];

  it('notices a row that is wrong, out of bounds or there twice', () => {
    expect(trains.length).toBeGreaterThan(20);
    expect(rowsThatHold(trains, limits)).toBe(trains.length);
    for (const wrong of [
      { ...first, wheels: [49, 45] },
      { ...first, pinions: [6] },
      { ...first, ratio: 60.000001 },
      { ...first, error: 0.1 },
      { wheels: [110, 60], pinions: [11, 10], ratio: 60, error: 0 },
      { wheels: [90, 70], pinions: [21, 5], ratio: 60, error: 0 },
      { ...second, wheels: [...second.wheels].reverse() },
    ])
      expect(rowsThatHold([wrong, ...trains.slice(1)], limits)).toBe(trains.length - 1);
  });

  it('notices a row that is missing, and one out of its order', () => {
    const right = cheapestTotals(trainsAtEachTotal(limits), 500);
    expect(totalsOf(trains)).toEqual(right);
    expect(totalsOf(trains.slice(1))).not.toEqual(right);
    expect(totalsOf([...trains].reverse())).not.toEqual(right);
  });
});

const InputErrorLine = /^\w+: .{1,80} is not accepted; give [^\n]{3,160}$/;

describe('motion work', () => {
  it('on equal centres, is what its formula gives: pinion = minute × sum / (ratio × cannon + minute)', () => {
    for (const ratio of [12, 24]) {
      const sets = found('train.motionWork', { ratio, minLeaves: 8, maxLeaves: 40, maxTeeth: 120 })
        .sets as MotionWork[];
      const solved: string[] = [];
      for (let cannon = 8; cannon <= 40; cannon++)
        for (let minute = cannon; minute <= 120; minute++) {
          const pinion = new Fraction(minute * (cannon + minute), ratio * cannon + minute);
          const hour = new Fraction(cannon + minute).sub(pinion);
          if (pinion.d !== 1n || pinion.compare(8) < 0 || pinion.compare(40) > 0) continue;
          if (hour.compare(pinion) >= 0 && hour.compare(120) <= 0)
            solved.push(`${cannon} ${minute} ${pinion.toFraction()} ${hour.toFraction()}`);
        }
      expect(sets.map((set) => Object.values(set).join(' ')).sort()).toEqual(solved.sort());
      expect(sets.length).toBeGreaterThan(10);
    }
  });

  it('says so when there is none, and when the list is cut short', () => {
    expect(found('train.motionWork', { ratio: 97 })).toMatchObject({ possible: false, count: 0, sets: [] });
    const { count, sets } = found('train.motionWork', { equalCentres: 'no' });
    expect(count).toBeGreaterThan(500);
    expect(sets).toHaveLength(500);
    expect(found('train.motionWork', { ratio: 97 }).reason).toMatch(/come to the ratio exactly/);
    const uneven = found('train.motionWork', { maxTeeth: 24, equalCentres: 'no' }).count;
    expect(found('train.motionWork', { maxTeeth: 24 }).reason).toBe(
      `none on equal centres; with two modules there are ${uneven} sets`,
    );
    expect(() => work('train.motionWork', { equalCentres: 'perhaps' })).toThrow(/true or false/);
    expect(() => work('train.motionWork', { maxLeaves: 5 })).toThrow(/at least the fewest leaves/);
  });
});

describe('pendulums', () => {
  const beats = fc.double({ min: 300, max: 50_000, noNaN: true });

  it('twice the beats are a quarter of the length; more gravity is a longer one', () => {
    fc.assert(
      fc.property(beats, fc.double({ min: 9.7, max: 9.899, noNaN: true }), (beatsPerHour, gravity) => {
        const length = (given: Record<string, unknown>) => found('pendulum.length', given).length as number;
        const one = length({ beatsPerHour, gravity });
        expect(length({ beatsPerHour: 2 * beatsPerHour, gravity }) / one).toBeCloseTo(1 / 4, 10);
        expect(length({ beatsPerHour, gravity: gravity + 0.001 })).toBeGreaterThan(one);
      }),
    );
  });

  it('north is as south, and nearer the pole is longer', () => {
    const length = (latitude: number) =>
      found('pendulum.length', { beatsPerHour: 3600, latitude }).length as number;
    for (let latitude = 1; latitude <= 90; latitude++) {
      expect(length(-latitude)).toBe(length(latitude));
      expect(length(latitude)).toBeGreaterThan(length(latitude - 1));
    }
    expect(() => work('pendulum.length', { beatsPerHour: 3600, latitude: 1, gravity: 9.8 })).toThrow(
      /not both/,
    );
  });
});
