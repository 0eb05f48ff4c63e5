import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError, work } from '../../src/index.js';

const whole = (min: number, max: number) => fc.integer({ min, max });
const circles = fc.uniqueArray(whole(2, 120), { minLength: 1, maxLength: 10 });
const found = (name: string, given: Record<string, unknown>) => work(`dividing.${name}`, given).found;

describe('both routes agree over the whole range', () => {
  const ranges = {
    direct: {
      divisions: whole(2, 1000),
      notches: fc.uniqueArray(whole(2, 1000), { minLength: 1, maxLength: 12 }),
    },
    simple: { divisions: whole(2, 10_000), ratio: whole(1, 1000), circles },
    angle: { angle: fc.double({ min: 0.001, max: 360, noNaN: true }), ratio: whole(1, 1000), circles },
    compound: {
      divisions: whole(2, 10_000),
      ratio: whole(1, 1000),
      plates: fc.array(circles, { minLength: 1, maxLength: 4 }),
    },
    differential: {
      divisions: whole(2, 1000),
      ratio: whole(1, 200),
      circles,
      gears: fc.array(whole(10, 200), { minLength: 1, maxLength: 14 }),
    },
    nearest: {
      divisions: whole(2, 10_000),
      ratio: whole(1, 1000),
      circles,
      diameter: fc.double({ min: 0.5, max: 2000, noNaN: true }),
    },
    plateError: {
      holeError: fc.double({ min: 0.0001, max: 0.5, noNaN: true }),
      plateRadius: fc.double({ min: 1, max: 1000, noNaN: true }),
      ratio: whole(1, 1000),
      wheelRadius: fc.double({ min: 0.5, max: 2000, noNaN: true }),
    },
  };
  it.each(Object.entries(ranges))('%s', (name, given) => {
    fc.assert(
      fc.property(fc.record<Record<string, unknown>>(given), (values) => {
        work(`dividing.${name}`, values);
      }),
      { numRuns: 150 },
    );
  });

  it('closing', () => {
    fc.assert(
      fc.property(
        whole(2, 10_000),
        fc.double({ min: -0.999, max: 0.999, noNaN: true }),
        fc.double({ min: 0.5, max: 2000, noNaN: true }),
        (divisions, share, diameter) => {
          const most = (Math.min(1, 5 / divisions) * 1_296_000) / divisions;
          const stepErrorArcSeconds = Math.max(-6e5, Math.min(6e5, share * most));
          const { closingAngle } = found('closing', { divisions, stepErrorArcSeconds, diameter });
          expect((closingAngle as number) * stepErrorArcSeconds).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  it('diagnose', () => {
    const seen = fc.oneof(
      fc.record({ teethCut: whole(2, 2000) }),
      fc.record({ closingGapAngle: fc.double({ min: -360, max: 360, noNaN: true }) }),
    );
    fc.assert(
      fc.property(
        whole(2, 2000),
        whole(1, 200),
        whole(2, 200),
        fc.double({ min: 0, max: 1, noNaN: true }),
        seen,
        (divisions, ratio, circle, share, observed) => {
          const right = (ratio * circle) / divisions;
          const least = Math.ceil(right / 2);
          const most = Math.floor(Math.min(2 * right, (ratio * circle) / 2));
          fc.pre(most >= least && most > 0);
          const intendedHoles = least + Math.floor(share * (most - least));
          const { candidates } = found('diagnose', { divisions, ratio, circle, intendedHoles, ...observed });
          // What is found can be put in again.
          for (const { closingGapAngle } of candidates as { closingGapAngle: number | null }[])
            if (closingGapAngle !== null)
              found('diagnose', { divisions, ratio, circle, intendedHoles, closingGapAngle });
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('plates', () => {
  it('are read as text and as lists, and one list is one plate', () => {
    const given = { divisions: 51, ratio: 40 };
    const text = found('compound', { ...given, plates: '15,16,17;18,19,20' });
    expect(
      found('compound', {
        ...given,
        plates: [
          [15, 16, 17],
          [18, 19, 20],
        ],
      }),
    ).toEqual(text);
    expect(found('compound', { ...given, plates: [15, 16, 17] })).toEqual(
      found('compound', { ...given, plates: '15,16,17' }),
    );
  });

  it.each([
    '15,16;',
    ';',
    '15;16,x',
    '15.5,16',
    [[15], 16],
    [15, [16]],
    [[]],
    'a'.repeat(5000),
    Array.from({ length: 13 }, () => [15, 16]),
    [Array.from({ length: 41 }, (_, i) => i + 2)],
    Array.from({ length: 3 }, () => Array.from({ length: 40 }, (_, i) => i + 2)),
  ])('refuses %j', (plates) =>
    expect(() => work('dividing.compound', { divisions: 51, ratio: 40, plates })).toThrow(InputError),
  );

  it('on two plates two circles cannot be used together', () => {
    expect(found('compound', { divisions: 51, ratio: 40, plates: '15;17' }).possible).toBe(false);
    expect(found('compound', { divisions: 51, ratio: 40, plates: '15,17' }).possible).toBe(true);
  });
});

describe('an angle', () => {
  it('typed in minutes and seconds is exact to a thousandth of a second', () => {
    const eighth = { ratio: 40, circles: [18, 16] };
    expect(found('angle', { ...eighth, angle: '5d37m30s' })).toEqual({
      turns: 0,
      holes: 10,
      circle: 16,
      errorArcSeconds: 0,
      exact: true,
    });
    expect(found('angle', { ...eighth, angle: '5d37m30.001s' })).toMatchObject({ holes: 10, exact: false });
    expect(found('angle', { ...eighth, angle: '5d37m30.001s' }).errorArcSeconds).toBeCloseTo(-0.001, 9);
  });

  it('of one division is found on the circles of simple indexing, where it ends in whole thousandths', () => {
    for (const divisions of [6, 8, 12, 20, 48, 60, 72, 96, 144, 360]) {
      const circles = [15, 16, 17, 18, 19, 20, 21, 24, 27, 33, 39, 49];
      const simple = found('simple', { divisions, ratio: 40, circles });
      const { exact, turns, holes, circle } = found('angle', { angle: 360 / divisions, ratio: 40, circles });
      expect(exact).toBe(simple.possible);
      if (exact) expect(simple).toMatchObject({ turns });
      if (exact && holes !== 0) expect(simple.settings).toContainEqual({ holes, circle });
    }
  });
});

describe('closing', () => {
  const verdict = (percent: number, sign: 1 | -1 = 1) =>
    found('closing', { divisions: 60, stepErrorArcSeconds: (sign * percent * 12_960) / 3600, diameter: 48 })
      .verdict;

  it('says at 1, 5 and 8 % what it shows', () => {
    expect([0, 0.99, 1, 4.99, 5, 7.99, 8].map((percent) => verdict(percent))).toEqual([
      'closes exactly',
      'too little to see: the last tooth is a hair thin',
      'found by measuring: the last tooth is thin',
      'found by measuring: the last tooth is thin',
      'seen by eye: the last tooth is thin',
      'seen by eye: the last tooth is thin',
      'felt in mesh: the last tooth is thin',
    ]);
    expect(verdict(9, -1)).toBe('felt in mesh: the last tooth is fat');
    expect(verdict(-0.5, 1)).toBe('too little to see: the last tooth is a hair fat');
    expect(verdict(60)).toBe('plain to see: the last tooth is gone');
    expect(() => verdict(500)).toThrow(/closes less than 5 pitches out/);
  });

  it('agrees with the nearest movement about the error it closes with', () => {
    const circles = [37, 39, 41, 43, 47, 49];
    const near = found('nearest', { divisions: 96, ratio: 40, circles, diameter: 76.8 });
    const closes = found('closing', {
      divisions: 96,
      stepErrorArcSeconds: near.stepErrorArcSeconds,
      diameter: 76.8,
    });
    expect(closes.closingAtRim).toBeCloseTo(near.closingErrorAtRim as number, 9);
  });
});

describe('diagnosis', () => {
  const class60 = { divisions: 60, ratio: 40, circle: 18, intendedHoles: 12 };

  it.each([
    [{ closingGapAngle: 30 }, 11, 0, 65, /counted as the first/],
    [{ closingGapAngle: -30 }, 13, 0, 55, /the arms held one hole too many/],
    [{ closingGapAngle: 0 }, 12, 0, 60, /right one every time/],
    [{ closingGapAngle: 0.5 }, 12, -1, 60, /one move was 1 space short and never put back/],
    [{ closingGapAngle: -1 }, 12, 2, 59, /one move was 2 spaces over/],
    [{ closingGapAngle: 60 }, 10, 0, 72, /2 spaces short each time; 72 teeth come out even/],
    [{ teethCut: 65 }, 11, 0, 65, /counted as the first/],
    [{ teethCut: 55 }, 13, 0, 55, /one hole too many/],
    [{ teethCut: 56 }, 13, 0, 55, /55 whole teeth and a thin one, counted as number 56/],
    [{ closingGapAngle: 0.2 }, 12, 0, 60, /less than half a space.*backlash/],
    [{ teethCut: 60 }, 12, 0, 60, /right one every time/],
    [{ teethCut: 24 }, 30, 0, 24, /a whole turn too many each time; 24 teeth/],
  ])('%j: %i spaces, %i once, %i teeth', (observed, holesMoved, onceSpaces, teethCut, reason) => {
    const result = found('diagnose', { ...class60, ...observed });
    expect(result).toMatchObject({ holesMoved, onceSpaces, teethCut });
    expect(result.reason).toMatch(reason);
  });

  it('says so when no steady move makes so many', () => {
    const result = found('diagnose', { ...class60, teethCut: 62 });
    expect(result).toMatchObject({ holesMoved: null, closingGapAngle: null, candidates: [] });
    expect(result.reason).toMatch(/made twice or left out/);
  });

  it('refuses a move that could not have been meant, and finds no gap of more than a turn', () => {
    for (const intendedHoles of [5, 25])
      expect(() => found('diagnose', { ...class60, intendedHoles, teethCut: 65 })).toThrow(
        /give from 6 to 24 spaces/,
      );
    expect(found('diagnose', { ...class60, teethCut: 24 }).closingGapAngle).toBeNull();
  });

  it('explains the one slip, and begins every line with a capital', () => {
    const { working } = work('dividing.diagnose', { ...class60, closingGapAngle: -1 });
    expect(working.join('\n')).toContain('j = R*H*(360 - G)/360 - N*k');
    for (const seen of [{ teethCut: 56 }, { teethCut: 62 }, { closingGapAngle: 30 }])
      for (const line of work('dividing.diagnose', { ...class60, ...seen }).working)
        expect(line).toMatch(/^(\p{Lu}|[a-z] = )/u);
  });

  it('wants one thing that was seen, not two and not none', () => {
    for (const seen of [{}, { teethCut: 65, closingGapAngle: 30 }])
      expect(() => work('dividing.diagnose', { ...class60, ...seen })).toThrow(InputError);
  });
});

it('differential indexing leaves out no movement of a small count', () => {
  const given = { divisions: 7, ratio: 40, circles: 49, gears: '24,144' };
  const { possible, settings, gearSet } = found('differential', given);
  expect(possible).toBe(true);
  // 238 spaces, seven times, are 34 turns of the 40; six turns of the plate are the rest.
  expect(settings).toContainEqual(expect.objectContaining({ turns: 4, holes: 42, spindleGears: [144] }));
  expect(gearSet).toBe('the gears given');
});

it('differential indexing says when it took the usual set for want of another', () => {
  const given = { ratio: 40, circles: [18] };
  const usual = /the usual set 24, 24, 28, /;
  expect(found('differential', { ...given, divisions: 127 }).gearSet).toMatch(usual);
  expect(work('dividing.differential', { ...given, divisions: 127 }).working.join()).toMatch(usual);
  expect(found('differential', { ...given, divisions: 1213 }).reason).toMatch(usual);
});

it('the nearest movement says when it makes another count', () => {
  const near = (divisions: number, circles: number[]) =>
    found('nearest', { divisions, ratio: 40, circles, diameter: 76.8 }).reason;
  expect(near(97, [20])).toBe('closes nearly 3 pitches out: this move makes 100 divisions; do not cut');
  expect(near(96, [37, 39, 41, 43, 47, 49])).toBeUndefined();
});

it('an angle that no double holds exactly is never called exact', () => {
  const at = (angle: string) => found('angle', { angle, ratio: 40, circles: [18] });
  expect(at('7').exact).toBe(true);
  expect(at('7.0000001').exact).toBe(false);
  expect(at('7.0000001').errorArcSeconds).toBeCloseTo(-0.00036, 9);
  for (const angle of ['7.00000000000000001', '7d0m0.0000000001s'])
    expect(() => at(angle)).toThrow(/12 decimals at most/);
});

it('differential indexing takes the common gears when none are named, and refuses too many', () => {
  const given = { divisions: 127, ratio: 40, circles: [18] };
  expect(found('differential', { ...given, gears: '24,24,28,32,40,44,48,56,64,72,86,100' })).toEqual(
    found('differential', given),
  );
  const gears = Array.from({ length: 31 }, (_, i) => 20 + i);
  expect(() => work('dividing.differential', { ...given, gears })).toThrow(/at most 30 different wheels/);
});

it('a list of settings is cut to a hundred, and the count is of them all', () => {
  const plates = [Array.from({ length: 12 }, (_, i) => 12 * (i + 1))];
  const { count, settings } = found('compound', { divisions: 12, ratio: 40, plates });
  expect(count).toBeGreaterThan(100);
  expect(settings).toHaveLength(100);
});
