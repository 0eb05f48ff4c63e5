import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { type CompoundSetting, compoundSettings } from '../../../src/geometry/dividing/compound.js';
import {
  type DifferentialSetting,
  differentialSettings,
  idlersFor,
} from '../../../src/geometry/dividing/differential.js';
import { prepareGears, ratioOf } from '../../../src/geometry/dividing/gears.js';
import { fraction } from '../../../src/geometry/fractions.js';
import { work } from '../../../src/index.js';
import { near } from './near.js';

const plates = [
  [15, 16, 17, 18, 19, 20],
  [21, 23, 27, 29, 31, 33],
  [37, 39, 41, 43, 47, 49],
];
const circles = plates.flat();

describe('simple indexing at 40:1, as Brown & Sharpe and Machinery’s Handbook print it (from memory)', () => {
  // Divisions, whole turns, holes and circle; circle 0: any circle serves.
  const rows: [number, number, number, number][] = [
    [2, 20, 0, 0],
    [3, 13, 13, 39],
    [5, 8, 0, 0],
    [7, 5, 35, 49],
    [9, 4, 12, 27],
    [11, 3, 21, 33],
    [12, 3, 13, 39],
    [13, 3, 3, 39],
    [14, 2, 42, 49],
    [17, 2, 6, 17],
    [18, 2, 6, 27],
    [21, 1, 19, 21],
    [22, 1, 27, 33],
    [23, 1, 17, 23],
    [24, 1, 26, 39],
    [25, 1, 12, 20],
    [26, 1, 21, 39],
    [28, 1, 21, 49],
    [29, 1, 11, 29],
    [31, 1, 9, 31],
    [32, 1, 5, 20],
    [33, 1, 7, 33],
    [34, 1, 3, 17],
    [35, 1, 7, 49],
    [36, 1, 3, 27],
    [39, 1, 1, 39],
    [41, 0, 40, 41],
    [45, 0, 24, 27],
    [47, 0, 40, 47],
    [48, 0, 15, 18],
    [52, 0, 30, 39],
    [54, 0, 20, 27],
    [56, 0, 35, 49],
    [60, 0, 26, 39],
    [64, 0, 10, 16],
    [72, 0, 15, 27],
    [75, 0, 8, 15],
    [95, 0, 8, 19],
    [98, 0, 20, 49],
    [120, 0, 13, 39],
    [144, 0, 5, 18],
    [164, 0, 10, 41],
    [180, 0, 6, 27],
  ];
  it.each(rows)('%i divisions: %i turns and %i in %i', (divisions, turns, holes, circle) => {
    const { found } = work('dividing.simple', { divisions, ratio: 40, circles });
    expect(found.turns).toBe(turns);
    if (circle > 0) expect(found.settings).toContainEqual({ holes, circle });
    else expect(found.settings).toEqual(circles.map((each) => ({ holes: 0, circle: each })));
  });

  it('reaches every count to 50 on the three plates, as the index tables say', () => {
    for (let divisions = 2; divisions <= 50; divisions++)
      expect(work('dividing.simple', { divisions, ratio: 40, circles }).found.possible).toBe(true);
  });

  // Computed, not printed: the handbook tables send these to compound and differential indexing.
  it('does not reach these up to 130', () => {
    const missing = [
      51, 53, 57, 59, 61, 63, 67, 69, 71, 73, 77, 79, 81, 83, 87, 89, 91, 93, 96, 97, 99, 101, 102, 103, 106,
      107, 109, 111, 112, 113, 114, 117, 118, 119, 121, 122, 123, 125, 126, 127, 129,
    ];
    const all = Array.from({ length: 129 }, (_, i) => i + 2);
    expect(
      all.filter((divisions) => !work('dividing.simple', { divisions, ratio: 40, circles }).found.possible),
    ).toEqual(missing);
  });
});

describe('simple indexing on other circles and heads', () => {
  // US Army Ordnance OD1644 (read): 42 on 42 or on 21. A lesson on simple indexing (read): 7 slots. A dividing-head
  // manual (read): 20. A practice sheet (read): 15. A rotary-table manual (read): 17, 19, 53. A page on rotary tables
  // (read): 4. The practice sheet’s other rows print questions only; their answers are computed.
  const rows: [number, number, number[], number, [number, number][]][] = [
    [
      42,
      40,
      [42, 21],
      0,
      [
        [40, 42],
        [20, 21],
      ],
    ],
    [7, 40, [21], 5, [[15, 21]]],
    [20, 40, [18], 2, [[0, 18]]],
    [
      15,
      40,
      [27, 36],
      2,
      [
        [18, 27],
        [24, 36],
      ],
    ],
    [17, 90, [34], 5, [[10, 34]]],
    [19, 90, [38], 4, [[28, 38]]],
    [53, 90, [53], 1, [[37, 53]]],
    [4, 90, [24], 22, [[12, 24]]],
    [26, 40, [44, 45, 47, 49, 52], 1, [[28, 52]]],
    [
      100,
      40,
      [18, 20, 22, 25, 27],
      0,
      [
        [8, 20],
        [10, 25],
      ],
    ],
    [
      14,
      60,
      [21, 23, 25, 26, 28],
      4,
      [
        [6, 21],
        [8, 28],
      ],
    ],
    [37, 60, [33, 35, 37, 39, 42], 1, [[23, 37]]],
    [
      90,
      60,
      [30, 32, 34, 35, 39],
      0,
      [
        [20, 30],
        [26, 39],
      ],
    ],
    [
      18,
      60,
      [33, 35, 36, 38, 40],
      3,
      [
        [11, 33],
        [12, 36],
      ],
    ],
    [25, 72, [33, 35, 36, 37, 39], 2, []],
    [19, 72, [19, 20, 21, 23, 25], 3, [[15, 19]]],
    [69, 72, [21, 23, 25, 27, 29], 1, [[1, 23]]],
    [
      27,
      90,
      [20, 21, 23, 25, 27],
      3,
      [
        [7, 21],
        [9, 27],
      ],
    ],
    [
      50,
      90,
      [30, 33, 36, 38, 40],
      1,
      [
        [24, 30],
        [32, 40],
      ],
    ],
    [
      40,
      90,
      [16, 18, 19, 21, 24],
      2,
      [
        [4, 16],
        [6, 24],
      ],
    ],
    [44, 90, [22, 24, 26, 28, 30], 2, [[1, 22]]],
  ];
  it.each(rows)('%i divisions at %i:1 on %j: %i turns and %j', (divisions, ratio, circles, turns, moves) => {
    const { found } = work('dividing.simple', { divisions, ratio, circles });
    expect(found).toMatchObject({ turns, possible: moves.length > 0 });
    expect(found.settings).toEqual(moves.map(([holes, circle]) => ({ holes, circle })));
  });

  it('holds 11 holes between the arms for 10 spaces, as the rotary-table manual counts them (read)', () =>
    expect(work('dividing.sectorArms', { holes: 10 }).found.holesBetween).toBe(11));
});

describe('angular indexing at 40:1', () => {
  // Brown & Sharpe, Practical Treatise on Milling, p. 54 (read).
  it.each([
    [1, 18, 0, 2],
    ['0d40m', 27, 0, 2],
    [0.5, 18, 0, 1],
    ['0d20m', 27, 0, 1],
    // Machinery’s Handbook, 1916 (read); 48° 40′ is worked in the book, its result computed here.
    [35, 18, 3, 16],
    [2.5, 18, 0, 5],
    [11.5, 18, 1, 5],
    ['48d40m', 27, 5, 11],
    // US Army OD1644 (read): a turn of the crank is 540′.
    ['0d54m', 20, 0, 2],
    [9, 20, 1, 0],
  ])('%s on %i: %i turns and %i', (angle, circle, turns, holes) =>
    expect(work('dividing.angle', { angle, ratio: 40, circles: [circle] }).found).toEqual({
      turns,
      holes,
      circle,
      errorArcSeconds: 0,
      exact: true,
    }),
  );

  it('finds those circles among all of the three plates', () => {
    const found = (angle: unknown) => work('dividing.angle', { angle, ratio: 40, circles }).found;
    expect(found(35)).toMatchObject({ turns: 3, holes: 16, circle: 18, exact: true });
    expect(found('48d40m')).toMatchObject({ turns: 5, holes: 11, circle: 27, exact: true });
  });

  // OD1644 (read): 540/24 = 22½, so 1 hole in 23 is taken; it is 23.478′.
  it('takes 1 in 23 for 24 minutes, and says that it is 0.522′ short', () => {
    const { found } = work('dividing.angle', { angle: '0d24m', ratio: 40, circles });
    expect(found).toMatchObject({ turns: 0, holes: 1, circle: 23, exact: false });
    expect(found.errorArcSeconds).toBeCloseTo(-0.522 * 60, 1);
  });

  it('25° at 72:1 is 5 turns, where 25 divisions have no circle', () =>
    expect(
      work('dividing.angle', { angle: 25, ratio: 72, circles: [33, 35, 36, 37, 39] }).found,
    ).toMatchObject({
      turns: 5,
      holes: 0,
      exact: true,
    }));
});

const contains = (settings: readonly CompoundSetting[], [h1, c1, sign, h2, c2]: Moves, turns = 0): boolean =>
  settings.some(
    (one) =>
      one.turns === turns &&
      one.sense === (sign === '+' ? 'forward' : 'back') &&
      ((one.holes1 === h1 && one.circle1 === c1 && one.holes2 === h2 && one.circle2 === c2) ||
        (sign === '+' && one.holes1 === h2 && one.circle1 === c2 && one.holes2 === h1 && one.circle2 === c1)),
  );

type Moves = [number, number, '+' | '-', number, number];

describe('parts of a turn by two moves: Machinery’s Handbook, 27th ed., p. 1995 (read)', () => {
  // Turns of the crank to four places, and the two moves that come near.
  const rows: [number, ...Moves][] = [
    [0.191, 17, 39, '-', 12, 49],
    [0.191, 21, 57, '-', 11, 62],
    [0.192, 7, 41, '+', 1, 47],
    [0.192, 12, 57, '-', 1, 54],
    [0.194, 7, 41, '+', 1, 43],
    [0.194, 14, 43, '-', 5, 38],
    [0.195, 8, 25, '-', 3, 24],
    [0.196, 21, 49, '-', 10, 43],
    [0.198, 2, 29, '+', 4, 31],
    [0.201, 11, 39, '-', 3, 37],
    [0.202, 23, 41, '-', 14, 39],
    [0.203, 2, 37, '+', 7, 47],
    [0.205, 13, 37, '-', 6, 41],
    [0.225, 2, 16, '+', 2, 20],
    [0.226, 7, 39, '+', 2, 43],
    [0.23, 7, 37, '+', 2, 49],
    [0.235, 11, 27, '-', 5, 29],
  ];
  it.each(rows)('%f turn: %i/%i %s %i/%i', (turn, ...moves) => {
    const [h1, c1, sign, h2, c2] = moves;
    const second = new Fraction(h2, c2);
    const sum = sign === '+' ? new Fraction(h1, c1).add(second) : new Fraction(h1, c1).sub(second);
    expect(Math.abs(sum.valueOf() - turn)).toBeLessThan(5e-5);
    const exact = fraction(Number(sum.n), Number(sum.d));
    expect(contains(compoundSettings(exact, [[c1, c2]]).settings, moves)).toBe(true);
  });

  it('0.2 turn is 3 in 15, one move', () =>
    expect(work('dividing.simple', { divisions: 5, ratio: 1, circles: [15] }).found.settings).toEqual([
      { holes: 3, circle: 15 },
    ]));
});

describe('compound indexing at 40:1 on the three plates', () => {
  // Brown & Sharpe and Machinery’s Handbook compound tables (from memory); 63 and 102 are computed.
  const rows: [number, ...Moves][] = [
    [51, 10, 15, '+', 2, 17],
    [57, 5, 15, '+', 7, 19],
    [63, 4, 21, '+', 12, 27],
    [69, 21, 23, '-', 11, 33],
    [77, 9, 21, '+', 3, 33],
    [87, 23, 29, '-', 11, 33],
    [91, 6, 39, '+', 14, 49],
    [93, 3, 31, '+', 11, 33],
    [96, 3, 18, '+', 5, 20],
    [99, 15, 27, '-', 5, 33],
    [102, 5, 15, '+', 1, 17],
  ];
  it.each(rows)('%i divisions: %i/%i %s %i/%i', (divisions, ...moves) => {
    const { found } = work('dividing.compound', { divisions, ratio: 40, plates });
    expect(contains(found.settings as CompoundSetting[], moves)).toBe(true);
  });

  // Machinery’s Handbook, as a question about 106 teeth quotes it (read): 1 turn + 7/39 + 29/41. It is no exact setting: it
  // moves five divisions at a time, and is out by 0.38″ at each move.
  it('does not claim 106: what is printed for it is near, and moves five divisions at a time', () => {
    expect(work('dividing.compound', { divisions: 106, ratio: 40, plates }).found).toMatchObject({
      possible: false,
      count: 0,
      settings: [],
    });
    const printed = new Fraction(1).add(7, 39).add(29, 41);
    const fiveDivisions = new Fraction(5 * 40, 106);
    expect(printed.equals(fiveDivisions)).toBe(false);
    expect(printed.sub(fiveDivisions).valueOf() * (1_296_000 / 40)).toBeCloseTo(0.38, 2);
    expect(compoundSettings(fraction(200, 106), plates).count).toBe(0);
    const asMoved = fraction(Number(printed.n), Number(printed.d));
    expect(contains(compoundSettings(asMoved, plates).settings, [7, 39, '+', 29, 41], 1)).toBe(true);
  });
});

describe('differential indexing at 40:1', () => {
  const gears = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
  const set = prepareGears(gears);
  const settingsFor = (divisions: number): readonly DifferentialSetting[] =>
    differentialSettings(divisions, 40, circles, set).settings;
  const spare = (wheels: readonly number[]) =>
    wheels.every(
      (one) => wheels.filter((other) => other === one).length <= gears.filter((g) => g === one).length,
    );

  // Divisions; holes and circle; spindle and first stud wheel; worm and second stud wheel; idlers.
  const rows: [number, number, number, number[], number[], number][] = [
    // Brown & Sharpe, Practical Treatise on Milling, pp. 56–57 (read).
    [2160, 1, 49, [100, 64], [28, 56], 1],
    [319, 4, 29, [72, 64], [24, 48], 1],
    // The same: “280 less nine”, one idler; the wheels are not in the passage read, 72/56 is computed.
    [271, 3, 21, [72], [56], 1],
    // Brown & Sharpe and Machinery’s Handbook differential tables (from memory).
    [51, 14, 17, [48], [24], 2],
    [53, 35, 49, [72, 40], [56, 24], 0],
    [57, 15, 21, [40], [56], 2],
    [59, 26, 39, [32], [48], 1],
    [61, 26, 39, [32], [48], 2],
    [67, 12, 21, [48], [28], 1],
    [69, 12, 20, [56], [40], 2],
    [71, 10, 18, [40], [72], 1],
    [73, 12, 21, [48], [28], 2],
    [77, 10, 20, [48], [32], 1],
    [79, 10, 20, [24], [48], 1],
    [81, 10, 20, [24], [48], 2],
    [83, 10, 20, [48], [32], 2],
    [87, 7, 15, [24], [40], 2],
    [89, 8, 18, [32], [72], 1],
    [91, 18, 39, [48], [24], 2],
    [96, 9, 21, [32], [28], 2],
    [97, 8, 20, [48], [40], 1],
    [99, 8, 20, [32, 28], [56, 40], 0],
    [101, 8, 20, [48, 24], [72, 40], 1],
    [103, 8, 20, [48], [40], 2],
    [107, 8, 20, [64, 56], [40, 32], 1],
    [109, 6, 16, [28], [32], 2],
    [113, 13, 39, [56], [24], 1],
    [117, 13, 39, [24], [24], 1],
    [119, 13, 39, [24], [72], 1],
    [121, 13, 39, [24], [72], 2],
    [122, 13, 39, [32], [48], 2],
  ];
  it.each(rows)(
    '%i divisions: %i in %i, gears %j over %j, %i idlers',
    (divisions, holes, circle, drivers, driven, idlers) => {
      const found = settingsFor(divisions).find(
        (one) => one.circle === circle && one.holes === holes && one.turns === 0,
      );
      expect(found).toBeDefined();
      if (!found) return;
      const { numerator, denominator } = found.gearRatio;
      // The wheels printed make the same ratio, and are in the set; ours are as few or fewer.
      expect(ratioOf({ drivers, driven })).toEqual({ numerator: Math.abs(numerator), denominator });
      expect(ratioOf(found.train)).toEqual(ratioOf({ drivers, driven }));
      expect(spare([...drivers, ...driven])).toBe(true);
      expect(found.train.drivers.length).toBeLessThanOrEqual(drivers.length);
      // The rule of idlers is the tables’ own, where the train is of as many wheels.
      if (found.train.drivers.length === drivers.length) expect(idlersFor(found)).toBe(idlers);
    },
  );

  it('127 by 120: 1/3 turn, and 7/3 against the crank by 56 and 24 (computed)', () => {
    const { found } = work('dividing.differential', { divisions: 127, ratio: 40, circles });
    expect(found).toMatchObject({ approximate: 120, plateTurns: -7 / 3 });
    expect((found.settings as unknown[])[0]).toMatchObject({
      holes: 5,
      circle: 15,
      spindleGears: [56],
      plateGears: [24],
      sense: 'opposite way to the crank, 2 idlers',
    });
  });
});

describe('errors that add up, and where they come from', () => {
  // Computed, error over radius: a hole 0.05 mm out at 50 mm is 3.4′ direct, 5.2″ through a 40:1 worm, 0.024 mm at 24 mm.
  const hole = { holeError: 0.05, plateRadius: 50, wheelRadius: 24 };
  near('dividing.plateError', hole, 'angleArcSeconds', 3.4 * 60, 3);
  near('dividing.plateError', hole, 'atRim', 0.024, 1e-12);
  near('dividing.plateError', { ...hole, ratio: 40 }, 'angleArcSeconds', 5.2, 0.05);
  near('dividing.plateError', { ...hole, ratio: 40 }, 'atRim', 0.0006, 1e-12);

  // Computed: steps rounded to whole minutes, at the closing tooth in per cent of the pitch.
  const rounded = (teeth: number) => 60 * Math.round(21_600 / teeth) - 1_296_000 / teeth;
  for (const [teeth, percent] of [
    [64, 9.5],
    [56, 4.2],
    [70, 9.7],
    [66, 5.5],
  ] as const)
    near(
      'dividing.closing',
      { divisions: teeth, stepErrorArcSeconds: rounded(teeth), diameter: 48 },
      'percentOfPitch',
      percent,
      0.06,
    );

  // A builder’s wheel of 96 that came out as 94 (a forum, read): 20 on 47 for 5/12 of a turn.
  it('94 teeth come of 20 on 47', () => {
    const { found } = work('dividing.diagnose', {
      divisions: 96,
      ratio: 40,
      circle: 47,
      intendedHoles: 20,
      teethCut: 94,
    });
    expect(found).toMatchObject({ holesMoved: 20, teethCut: 94 });
    expect(found.reason).toMatch(/does not make 96/);
  });
});

describe('direct dividing', () => {
  // A chapter on the division plate of an ornamental lathe (read): 12 parts on the 96 circle are holes 8, 16, 24, 32 and so on.
  it('12 parts on 96', () =>
    expect(work('dividing.direct', { divisions: 12, notches: [96, 112, 144, 360] }).found).toMatchObject({
      plate: 96,
      step: 8,
      sequence: [0, 8, 16, 24, 32, 40, 48, 56, 64, 72, 80, 88],
      plates: [
        { plate: 96, step: 8 },
        { plate: 144, step: 12 },
        { plate: 360, step: 30 },
      ],
    }));

  it('60 on 144 is not possible; on 360 it is 6 holes', () => {
    expect(work('dividing.direct', { divisions: 60, notches: 144 }).found.possible).toBe(false);
    expect(work('dividing.direct', { divisions: 60, notches: 360 }).found.step).toBe(6);
  });
});

it('the tally ends on the head’s whole ratio and marks quarters', () => {
  const rows = work('dividing.tally', { divisions: 60, ratio: 40, circles: '18' }).found.rows as Record<
    string,
    unknown
  >[];
  expect(rows[15]).toMatchObject({ tooth: 15, turns: 10, holes: 0, angle: '90° 0′ 0″', quarter: true });
  expect(rows.at(-1)).toMatchObject({ tooth: 60, turns: 40, holes: 0, quarter: true });
  expect(rows.filter((row) => row.quarter)).toHaveLength(5);
});

it('even but wrong: slips of one space that make another whole count (computed)', () => {
  // Wanted, circle, intended, moved, made.
  for (const [divisions, circle, intendedHoles, moved, teethCut] of [
    [56, 21, 15, 14, 60],
    [60, 21, 14, 15, 56],
    [72, 18, 10, 9, 80],
    [80, 18, 9, 8, 90],
    [80, 18, 9, 10, 72],
    [90, 18, 8, 9, 80],
    [45, 18, 16, 15, 48],
    [48, 18, 15, 16, 45],
    [38, 19, 20, 19, 40],
    [39, 39, 40, 39, 40],
    [41, 41, 40, 41, 40],
    [42, 21, 20, 21, 40],
    [24, 15, 25, 24, 25],
    [25, 15, 24, 25, 24],
    [100, 15, 6, 5, 120],
  ] as const) {
    const { found } = work('dividing.diagnose', { divisions, ratio: 40, circle, intendedHoles, teethCut });
    expect(found.holesMoved).toBe(moved);
    expect(found.reason).toContain(`${teethCut} teeth come out even`);
    const byGap = { divisions, ratio: 40, circle, intendedHoles, closingGapAngle: found.closingGapAngle };
    expect(work('dividing.diagnose', byGap).found.holesMoved).toBe(moved);
  }
});
