import { describe, expect, it } from 'vitest';
import { bearing, metalRound } from '../../src/geometry/cutting/around.js';
import { diagnoseSpacing } from '../../src/geometry/cutting/diagnose.js';
import { humpCut } from '../../src/geometry/cutting/hump.js';
import { cutAngles, roundedSteps, withBacklash, withRipple } from '../../src/geometry/cutting/indexing.js';
import { measureWheel } from '../../src/geometry/cutting/measure.js';
import { cutWheel, type Job } from '../../src/geometry/cutting/simulate.js';
import { spaceOf } from '../../src/geometry/cutting/space.js';
import { cutClassWheel, HOLE, moves, parts, pitch, pitchRadius, space, WITHIN } from './cutting-wheel.js';

const HALF = pitch / 2;
const along = (arcSeconds: number, radius = pitchRadius) => (arcSeconds / 3600 / 180) * Math.PI * radius;
const near = (value: number | undefined, expected: number, within = WITHIN) =>
  expect(Math.abs((value ?? Number.NaN) - expected), `${value} against ${expected}`).toBeLessThanOrEqual(
    within,
  );
const allNear = (values: readonly number[], expected: number, within = WITHIN) => {
  for (const value of values) near(value, expected, within);
};

/** Any wheel of module 0.8 with the class wheel's proportions. */
function cutOther(teeth: number, cuts: number[]) {
  const own = spaceOf(teeth, 8, 0.8, parts);
  const job: Job = {
    space: own,
    cuts,
    tipAt: own.rootRadius,
    offset: 0,
    blankRadius: own.rimRadius,
    eccentricity: 0,
  };
  return { ...measureWheel(cutWheel(job), job, teeth, own.pitchRadius), pitchRadius: own.pitchRadius };
}

describe('what a spoiled wheel shows: the trade’s signs, each cut in metal and measured', () => {
  it('a clean wheel has equal teeth as wide as its spaces', () => {
    const { toothThicknesses, spaceWidths, lands, lean } = cutClassWheel();
    expect(toothThicknesses).toHaveLength(60);
    allNear(toothThicknesses, HALF);
    allNear(spaceWidths, HALF);
    allNear(lands, lands[0] ?? 0, 0.002);
    near(lean, 0, 1e-4);
  });

  it('every move a hole short: 60 cuts reach 330°, and the last tooth holds five pitches more', () => {
    const { toothThicknesses } = cutClassWheel({ cuts: moves({ stepError: -HOLE }) });
    const step = pitch * (5.5 / 6);
    allNear(toothThicknesses.slice(0, -1), step - HALF);
    near(toothThicknesses.at(-1), step - HALF + 5 * pitch);
  });

  it('every move a hole long: 55.4 teeth go round; the 56th move spoils the closing tooth', () => {
    expect(360 / 6.5).toBeCloseTo(55.38, 2);
    const right = cutClassWheel({ cuts: moves({ stepError: HOLE, steps: 56 }) });
    allNear(right.toothThicknesses.slice(0, -1), pitch * (6.5 / 6) - HALF);
    // 2.5° is left between two spaces of 3°: nothing stands there.
    near(right.toothThicknesses.at(-1), 0);
    // The saying has it that all other teeth stay equal. That holds only while the cutting stops at the first
    // space: all sixty cuts run on through the first four teeth and spoil them as well.
    const run = cutClassWheel({ cuts: moves({ stepError: HOLE }) });
    const good = run.toothThicknesses.filter((one) => Math.abs(one - (pitch * (6.5 / 6) - HALF)) < WITHIN);
    expect(run.toothThicknesses).toHaveLength(60);
    expect(good).toHaveLength(51);
    expect(diagnoseSpacing(60, 0.8, run).spacing).toEqual(['overrun']);
  });

  it('96 wanted on circles that cannot: evenly 94 by 20/47; 94.3 by 14/33 and 95.6 by 18/43 leave a part of a tooth', () => {
    const cut = (holes: number, circle: number, steps: number) =>
      cutOther(96, cutAngles({ teeth: 96, steps, stepError: ((360 * holes) / circle / 40 - 3.75) * 3600 }));
    const even = cut(20, 47, 94);
    allNear(even.toothThicknesses, (2 * Math.PI * even.pitchRadius) / 94 - HALF);
    expect(diagnoseSpacing(96, 0.8, even).spacing).toEqual(['otherCount']);
    for (const [holes, circle, teeth] of [
      [14, 33, 94.2857],
      [18, 43, 95.5556],
    ] as const) {
      const wheel = cut(holes, circle, Math.floor(teeth));
      const step = (2 * Math.PI * wheel.pitchRadius) / teeth;
      near(wheel.toothThicknesses.at(-1), step - HALF + (teeth % 1) * step);
      expect(diagnoseSpacing(96, 0.8, wheel).spacing).toEqual(['closingThick']);
    }
  });

  it('one slip of a hole and back: one tooth thick, the next thin, by 0.209 mm, 8.3 % of the pitch', () => {
    const slip = along(HOLE);
    expect(slip).toBeCloseTo(0.209, 3);
    expect((100 * slip) / pitch).toBeCloseTo(8.3, 1);
    expect(along((360 * 3600) / 40 / 49)).toBeCloseTo(0.077, 3);
    const { toothThicknesses } = cutClassWheel({
      cuts: moves({ slip: { at: 20, by: HOLE, putBack: true } }),
    });
    near(toothThicknesses[19], HALF + slip);
    near(toothThicknesses[20], HALF - slip);
    allNear([...toothThicknesses.slice(0, 19), ...toothThicknesses.slice(21)], HALF);
  });

  it('one slip kept: one tooth thick, and the closing tooth thin by the same', () => {
    const { toothThicknesses } = cutClassWheel({
      cuts: moves({ slip: { at: 20, by: HOLE, putBack: false } }),
    });
    near(toothThicknesses[19], HALF + along(HOLE));
    near(toothThicknesses[59], HALF - along(HOLE));
    allNear([...toothThicknesses.slice(0, 19), ...toothThicknesses.slice(20, 59)], HALF);
  });

  it('the cutter off centre: every tooth leans by asin(e/R), 0.24° for 0.1 mm and 0.48° for 0.2, and keeps its thickness', () => {
    for (const [offset, lean] of [
      [0.1, 0.24],
      [0.2, 0.48],
      [-0.2, -0.48],
    ] as const) {
      const wheel = cutClassWheel({ offset });
      near(wheel.lean, lean, 0.005);
      near(wheel.lean, (Math.asin(offset / pitchRadius) * 180) / Math.PI, 2e-4);
      allNear(wheel.toothThicknesses, HALF, 2 * WITHIN);
    }
  });

  it('on a small radius the same offset leans far more: at R 3.2, 1.8° for 0.1 mm and 3.6° for 0.2', () => {
    // Eight teeth of module 0.8, cut with a wheel's form: the saying is of a pinion, but only radius and offset tell.
    const own = spaceOf(8, 8, 0.8, parts);
    for (const [offset, lean] of [
      [0.1, 1.8],
      [0.2, 3.6],
    ] as const) {
      const cuts = cutAngles({ teeth: 8, steps: 8, stepError: 0 });
      const job = {
        space: own,
        cuts,
        tipAt: own.rootRadius,
        offset,
        blankRadius: own.rimRadius,
        eccentricity: 0,
      };
      near(measureWheel(cutWheel(job), job, 8, 3.2).lean, lean, 0.05);
    }
  });

  it('a blank 0.1 mm too large, sunk by the dial from its own rim, is 0.05 mm short of depth, with broad flats', () => {
    const right = cutClassWheel();
    const big = cutClassWheel({ blankRadius: space.rimRadius + 0.05, tipAt: space.rootRadius + 0.05 });
    near(big.rootRadius - right.rootRadius, 0.05, 2e-4);
    expect(Math.min(...big.lands)).toBeGreaterThan(Math.max(...right.lands));
    const shallow = cutClassWheel({ tipAt: space.rootRadius + 0.05 });
    expect(Math.min(...shallow.lands)).toBeGreaterThan(Math.max(...right.lands) + 0.03);
    // The saying blames the blank for flats. Cut to the right root circle a large blank has the opposite: its teeth
    // go on to where they are narrower. The flats are of the depth that was lost by touching on a large rim.
    const atRoot = cutClassWheel({ blankRadius: space.rimRadius + 0.05 });
    expect(Math.max(...atRoot.lands)).toBeLessThan(Math.min(...right.lands) - 0.03);
  });

  it('a blank of 49.60 mm (the involute’s + 2) leaves the tips 0.304 mm short', () => {
    const small = cutClassWheel({ blankRadius: 24.8 });
    const tip = (wheel: typeof small) =>
      Math.max(...wheel.outlines.flat().map(({ x, y }) => Math.hypot(x, y)));
    const right = cutClassWheel();
    near(tip(right) - tip(small), 0.304, 2e-4);
    // The saying has such teeth pointed. At the right depth they are the opposite: cut off where they are still broad.
    expect(Math.min(...small.lands)).toBeGreaterThan(2 * Math.max(...right.lands));
    // Pointed they become when the cutter goes too deep.
    const deep = cutClassWheel({ tipAt: space.rootRadius - 0.304 });
    expect(Math.max(...deep.lands)).toBe(0);
    // Sunk by the dial from its own rim, the small blank has teeth of full height, a little sharper, and all of it low.
    const touched = cutClassWheel({ blankRadius: 24.8, tipAt: space.rootRadius - 0.304 });
    expect(Math.max(...touched.lands)).toBeLessThan(Math.min(...right.lands));
    expect(Math.min(...touched.lands)).toBeGreaterThan(0);
  });

  it('an eccentric blank: sharp tips where it stands out, broad ones opposite; a dial swings 2e', () => {
    const e = 0.05;
    const { lands, toothThicknesses, runOut } = cutClassWheel({ eccentricity: e });
    near(runOut, 2 * e, 0.001);
    allNear(toothThicknesses, HALF);
    // The first cut was made where the blank stands out most: there a tooth goes on to where it is narrower.
    expect([0, 59]).toContain(lands.indexOf(Math.min(...lands)));
    expect([29, 30]).toContain(lands.indexOf(Math.max(...lands)));
    expect(Math.max(...lands) - Math.min(...lands)).toBeGreaterThan(0.1);
  });

  it('mounted again off its centre: thicknesses stay, and the pitch goes out and back by e, once per turn', () => {
    const e = 0.05;
    const { outlines } = cutClassWheel();
    const bore = { x: e, y: 0 };
    const teeth = metalRound(outlines, bore, pitchRadius).map(({ from, to }) => (from + to) / 2);
    const errors = teeth.map((middle, tooth) => {
      const away = ((middle - (6 * tooth + 3) + 540) % 360) - 180;
      return (away / 180) * Math.PI * pitchRadius;
    });
    expect(teeth).toHaveLength(60);
    near(Math.max(...errors), e, 0.002);
    near(Math.min(...errors), -e, 0.002);
    errors.forEach((error, tooth) => {
      // From the top anticlockwise, a bore to the right puts every tooth on by e times the cosine of its bearing.
      near(error, e * Math.cos(((6 * tooth + 3) * Math.PI) / 180), 0.003);
    });
    near(bearing({ x: -1, y: 0 }, { x: 0, y: 0 }), 90, 1e-9);
  });

  it('a worm 1′ out: a ripple of 0.007 mm in where the teeth stand, and in thickness of up to √3 as much', () => {
    const { toothThicknesses } = cutClassWheel({ cuts: withRipple(moves(), 40, 60) });
    expect(along(60)).toBeCloseTo(0.007, 4);
    // Two-thirds of a turn of the crank for a tooth: the pattern is over after three teeth, two turns.
    for (let tooth = 0; tooth < 57; tooth++)
      near(toothThicknesses[tooth], toothThicknesses[tooth + 3] ?? 0, 2e-4);
    // The saying gives ±0.007 for the ripple in thickness. That is its size in place; a tooth has one wall early and
    // the next late, so its thickness ripples by 2 sin 120° = 1.73 times as much.
    const swing = Math.max(...toothThicknesses) - HALF;
    near(swing, Math.sqrt(3) * along(60), 2e-4);
  });

  it('travel stopped short: the root humped at the far face, 0.04 to 1.09 mm for 1 to 5 mm under a 24 mm cutter', () => {
    for (const [short, hump] of [
      [1, 0.04],
      [2, 0.17],
      [3, 0.38],
      [4, 0.69],
      [5, 1.09],
    ] as const) {
      near(humpCut(24, short), hump, 0.005);
      near(humpCut(24, short), 12 - Math.sqrt(144 - short ** 2), 1e-4);
    }
  });

  it('each step rounded to the minute: the closing tooth out by a few per cent of the pitch, or not at all', () => {
    for (const [teeth, angle, percent] of [
      [64, 0.533, 9.5],
      [56, 0.267, 4.2],
      [70, 0.5, 9.7],
      [66, -0.3, -5.5],
      [60, 0, 0],
      [72, 0, 0],
      [80, 0, 0],
      [96, 0, 0],
    ] as const) {
      const wheel = cutOther(teeth, roundedSteps(teeth, 60));
      const others = wheel.toothThicknesses[0] ?? 0;
      const out = (others - (wheel.toothThicknesses.at(-1) ?? 0)) / wheel.pitchRadius;
      // The closing tooth wants the error of all the moves.
      near((out * 180) / Math.PI, angle, 0.004);
      near((100 * out * teeth) / (2 * Math.PI), percent, 0.06);
    }
  });

  it('slack taken up from both sides, 3′: every third tooth thin by 0.021 mm, and the one after it thick', () => {
    const { toothThicknesses } = cutClassWheel({ cuts: withBacklash(moves(), 3, 180) });
    expect(along(180)).toBeCloseTo(0.021, 3);
    toothThicknesses.forEach((thickness, tooth) => {
      // The saying speaks of thin teeth only; what one tooth loses its neighbour gains.
      near(thickness, HALF + along(180) * ([0, -1, 1][tooth % 3] ?? 0), WITHIN);
    });
  });

  it('a cutter of module 0.85 for 0.80: every tooth thinner by 0.079 mm, the pitch unchanged', () => {
    const wide = spaceOf(60, 8, 0.85, parts);
    // Sunk until the cutter's own pitch line is at the wheel's: deeper by as much as its dedendum is longer.
    const wheel = cutClassWheel({ space: wide, tipAt: pitchRadius - 0.85 * 1.57 });
    allNear(wheel.toothThicknesses, HALF - (Math.PI * 0.05) / 2);
    expect((Math.PI * 0.05) / 2).toBeCloseTo(0.079, 3);
    wheel.toothThicknesses.forEach((tooth, i) => {
      near(tooth + (wheel.spaceWidths[i] ?? 0), pitch, 2e-4);
    });
    // Stopped at the right root circle instead, it widens them by 0.075.
    near(cutClassWheel({ space: wide }).toothThicknesses[0], HALF - 0.0747);
  });

  it('cut twice with a shift between: every tooth thin by the shift', () => {
    const shift = 600;
    const twice = cutClassWheel({ cuts: [...moves(), ...moves().map((cut) => cut + shift / 3600)] });
    const whole = twice.toothThicknesses.filter((one) => one > 0);
    expect(whole).toHaveLength(60);
    allNear(whole, HALF - along(shift));
  });
});
