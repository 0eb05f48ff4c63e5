import { FillRule, intersectD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flattened, turnedPath } from '../../src/geometry/curves/path.js';
import { turned } from '../../src/geometry/curves/point.js';
import { leastPlay, meshAction } from '../../src/geometry/wheels/action.js';
import { strikes } from '../../src/geometry/wheels/clearance.js';
import { theoreticalAddendum, wheelFace } from '../../src/geometry/wheels/epicycloid.js';
import { pinionOutline } from '../../src/geometry/wheels/pinion-outline.js';
import { type Pair, rolling } from '../../src/geometry/wheels/rolling.js';
import { wheelOutline } from '../../src/geometry/wheels/wheel-outline.js';
import { furthestContact } from '../../src/handbook/wheels/contacts.js';

/** The cutter maker's leaves: thin with a full ogive, and thick with a third of one. */
const thin = { addendum: 0.855, leafThickness: 1.05, tipRadius: 1.05 };
const thick = { addendum: 0.805, leafThickness: 1.25, tipRadius: 0.82 };

function pair(teeth: number, leaves: number, share = 0.95, gap = 0): Pair {
  return {
    teeth,
    leaves,
    centres: (teeth + leaves) / 2 + gap,
    addendum: share * theoreticalAddendum(teeth, leaves),
    dedendum: 1.57,
    leaf: leaves < 10 ? thin : thick,
  };
}

describe('the addendum factor proves itself: at right centres and the theoretical addendum', () => {
  it.each([
    [60, 8],
    [72, 6],
    [96, 12],
    [120, 16],
    [30, 30],
    [8, 7],
    [1000, 5],
  ])('%s teeth drive %s leaves evenly from the line of centres until the point leaves', (teeth, leaves) => {
    const pairing = pair(teeth, leaves, 1);
    const { touch, wheelPitch } = rolling(pairing);
    const { tipRoll } = wheelFace(teeth, leaves);
    const by = 1e-6 * wheelPitch;
    for (let i = 1; i < 200; i++) {
      const wheel = (tipRoll * i) / 200;
      const [before, at, after] = [wheel - by, wheel, wheel + by].map((one) => touch(one)?.pinion ?? NaN);
      expect(Math.abs((at as number) - (wheel * teeth) / leaves)).toBeLessThan(1e-12);
      const ratio = ((after as number) - (before as number)) / (2 * by);
      expect(Math.abs(ratio / (teeth / leaves) - 1)).toBeLessThan(1e-6);
    }
    // Past the point of the tooth it falls behind, and at once.
    const past = tipRoll + 0.02 * wheelPitch;
    expect((touch(past)?.pinion ?? NaN) - (past * teeth) / leaves).toBeLessThan(-1e-6);
  });

  it('a shortened tooth lets go as much earlier as its face is shorter', () => {
    for (const [teeth, leaves] of [
      [60, 8],
      [96, 12],
    ] as const) {
      const { touch } = rolling(pair(teeth, leaves, 0.95));
      const end = wheelFace(teeth, leaves).rollAt(teeth / 2 + 0.95 * theoreticalAddendum(teeth, leaves));
      const lag = (wheel: number): number => (wheel * teeth) / leaves - (touch(wheel)?.pinion ?? NaN);
      expect(Math.abs(lag(0.999 * end))).toBeLessThan(1e-12);
      expect(lag(1.01 * end)).toBeGreaterThan(1e-7);
    }
  });

  it('after the line of centres eleven leaves hold on for a whole pitch, ten do not quite', () => {
    const inPitches = (leaves: number): number =>
      wheelFace(7.5 * leaves, leaves).tipRoll / ((2 * Math.PI) / (7.5 * leaves));
    expect(inPitches(8)).toBeLessThan(0.9);
    expect(inPitches(10)).toBeLessThan(1);
    expect(inPitches(11)).toBeGreaterThan(1);
  });
});

/** Whether the outlines overlap, by the polygon library, at angles of wheel and pinion; only the teeth about the mesh. */
function overlapping(one: Pair): (wheel: number, pinion: number) => boolean {
  const { teeth, leaves, leaf, centres } = one;
  const whole = flattened(turnedPath(wheelOutline({ ...one, module: 1 }, 1e-5), -Math.PI / 2 / teeth), 1e-5);
  const near = (4.6 * 2 * Math.PI) / teeth;
  const some = whole.filter(({ x, y }) => Math.abs(Math.atan2(y, x)) < near);
  const byAngle = some.toSorted((a, b) => Math.atan2(a.y, a.x) - Math.atan2(b.y, b.x));
  const wheelTeeth = [{ x: 0, y: 0 }, ...byAngle];
  const half = leaf.leafThickness / leaves;
  const leavesRound = flattened(
    turnedPath(pinionOutline({ leaves, module: 1, ...leaf, dedendum: 1.9 }), Math.PI - half),
    1e-5,
  );
  return (wheel, pinion) => {
    const a = wheelTeeth.map((p) => turned(p, wheel));
    const b = leavesRound.map((p) => turned(p, -pinion)).map(({ x, y }) => ({ x: x + centres, y }));
    return intersectD([a], [b], FillRule.NonZero, 8).length > 0;
  };
}

it('where the pinion is put the outlines touch: a hair back they overlap, a hair on they do not (polygon library)', () => {
  for (const one of [
    pair(60, 8),
    pair(60, 8, 0.95, 0.3),
    pair(60, 8, 0.95, -0.2),
    pair(36, 12, 1),
    pair(24, 6),
  ]) {
    const { drive, wheelPitch } = rolling(one);
    const overlap = overlapping(one);
    for (let i = 0; i < 12; i++) {
      const wheel = (wheelPitch * (i + 0.3)) / 12;
      const pinion = drive(wheel)?.pinion ?? Number.NaN;
      expect(overlap(wheel, pinion + 2e-4), `on, ${i}`).toBe(false);
      expect(overlap(wheel, pinion - 2e-4), `back, ${i}`).toBe(true);
    }
  }
});

it('the play is what the polygons leave, the pinion turned on until they cut', () => {
  for (const gap of [-0.15, 0, 0.25]) {
    const one = pair(60, 8, 0.95, gap);
    const system = rolling(one);
    const play = leastPlay(system) ?? Number.NaN;
    expect(play).toBeGreaterThan(0);
    // At the right depth it is what pitch, tooth and leaf leave.
    if (gap === 0) expect(play * 4).toBeCloseTo(Math.PI / 2 - 1.05, 9);
    const overlap = overlapping(one);
    const left = Array.from({ length: 24 }, (_, i) => {
      const wheel = (system.wheelPitch * i) / 24;
      const pinion = system.drive(wheel)?.pinion ?? Number.NaN;
      let [low, high] = [1e-4, 0.4];
      for (let step = 0; step < 11; step++) {
        const middle = (low + high) / 2;
        if (overlap(wheel, pinion + middle)) high = middle;
        else low = middle;
      }
      return low;
    });
    expect(Math.abs(Math.min(...left) - play)).toBeLessThan(1e-3);
  }
});

const anyPair = fc
  .record({
    leaves: fc.integer({ min: 5, max: 60 }),
    more: fc.integer({ min: 0, max: 200 }),
    share: fc.constantFrom(0.95, 1),
    gap: fc.oneof(fc.constant(0), fc.double({ min: -0.4, max: 2, noNaN: true })),
  })
  .map(({ leaves, more, share, gap }) => pair(Math.max(6, leaves + more), leaves, share, gap));

it('each touch is the one that the conditions of contact give, all round the mesh, at any centres', () => {
  fc.assert(
    fc.property(anyPair, fc.double({ min: -2, max: 2.5, noNaN: true }), (one, place) => {
      const { touch, wheelPitch } = rolling(one);
      const [rolled, solved] = [touch(place * wheelPitch), furthestContact(one, place * wheelPitch)];
      // At the very edge of reach the one may still find what the other has lost.
      if (rolled && solved) expect(Math.abs(rolled.pinion - solved.pinion)).toBeLessThan(1e-8);
    }),
    { numRuns: 1500 },
  );
});

it('nothing in the mesh jumps: the pinion’s place is continuous from tooth to tooth, and a pitch on is a leaf on', () => {
  fc.assert(
    fc.property(anyPair, fc.double({ min: 0, max: 1, noNaN: true }), (one, place) => {
      const { drive, wheelPitch, pinionPitch } = rolling(one);
      const wheel = place * wheelPitch;
      const [now, soon, later] = [wheel, wheel + 1e-6 * wheelPitch, wheel + wheelPitch].map(drive);
      if (!now || !soon || !later) return;
      expect(Math.abs(soon.pinion - now.pinion)).toBeLessThan(1e-4 * pinionPitch);
      expect(later.pinion - now.pinion).toBeCloseTo(pinionPitch, 10);
    }),
    { numRuns: 150 },
  );
});

it('over one pitch the ratio averages to teeth over leaves: what is lost at one place is gained at another', () => {
  for (const gap of [0, 0.2, 0.8, -0.2]) {
    const one = pair(60, 8, 0.95, gap);
    const { curve } = meshAction(rolling(one), 480) ?? { curve: [] };
    expect(curve).toHaveLength(480);
    expect(curve.reduce((sum, { ratio }) => sum + ratio, 0) / 480).toBeCloseTo(7.5, 2);
  }
});

it('a tooth is always touching somewhere: first and last contact are a pitch apart or more', () => {
  fc.assert(
    fc.property(anyPair, (one) => {
      const system = rolling(one);
      const action = meshAction(system, 4);
      if (action) expect(action.last - action.first).toBeGreaterThan(system.wheelPitch * (1 - 1e-6));
    }),
    { numRuns: 60 },
  );
});

it('out of mesh is told: apart, nothing; too close, what strikes', () => {
  expect(meshAction(rolling(pair(60, 8, 0.95, 3)), 8)).toBeUndefined();
  expect(leastPlay(rolling(pair(60, 8, 0.95, 3)))).toBeUndefined();
  expect(strikes(pair(60, 8), 1.9)).toBeUndefined();
  expect(strikes(pair(60, 8, 0.95, -0.5), 1.9)).toBe('wheel tips');
  expect(strikes(pair(60, 8, 0.95, -0.9), 3)).toBe('leaf tips');
});

it('the touching place lies on the wheel and on the leaf', () => {
  const one = pair(60, 8);
  const { touch, wheelPitch } = rolling(one);
  for (let i = -1; i <= 6; i++) {
    const wheel = (wheelPitch * i) / 8;
    const found = touch(wheel);
    if (!found) continue;
    const place = turned(found.onTooth, wheel);
    const [dx, dy] = [one.centres - place.x, place.y];
    if (Math.hypot(dx, dy) <= 4) expect(Math.atan2(dy, dx)).toBeCloseTo(found.pinion, 9);
    expect(Math.hypot(dx, dy)).toBeLessThanOrEqual(4.855 + 1e-9);
  }
});
