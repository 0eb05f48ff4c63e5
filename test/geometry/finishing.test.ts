import { areaD, EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaOf,
  endOf,
  flattened,
  isArc,
  type Path,
  shifted,
  turnedPath,
} from '../../src/geometry/curves/path.js';
import { distance, type Point } from '../../src/geometry/curves/point.js';
import { pegDiameters, taperHalfAngle } from '../../src/geometry/finishing/arm.js';
import { type Crossing, removed, windowsOf } from '../../src/geometry/finishing/crossing.js';
import { discMass } from '../../src/geometry/finishing/disc.js';
import { polarMomentOf } from '../../src/geometry/finishing/moment.js';
import { InputError, work } from '../../src/index.js';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Wheels of all proportions that an arm can be drawn for; many have windows, some have none. */
const wheels: fc.Arbitrary<Crossing> = fc
  .tuple(
    fc.integer({ min: 3, max: 12 }),
    share(5, 200),
    share(0.1, 0.7),
    share(0.02, 0.35),
    share(0.05, 0.6),
    share(0, 0.3),
  )
  .map(([arms, rimRadius, hub, rimWidth, hubWidth, fillet]) => ({
    arms,
    rimRadius,
    hubRadius: hub * rimRadius,
    widthAtRim: rimWidth * rimRadius,
    widthAtHub: hubWidth * 2 * hub * rimRadius,
    filletRadius: fillet < 0.03 ? 0 : fillet * (1 - hub) * rimRadius * 0.5,
  }));

/** What a wheel's windows must be, where it has any. */
function eachWindow(check: (window: Path, wheel: Crossing) => void): void {
  let open = 0;
  fc.assert(
    fc.property(wheels, (wheel) => {
      const result = windowsOf(wheel);
      if ('closed' in result) return;
      open++;
      for (const window of result.windows) check(window, wheel);
    }),
    { numRuns: 400 },
  );
  expect(open).toBeGreaterThan(80);
}

/** Direction of a path at the start or the end of one of its pieces. */
function heading(from: Point, segment: Path['segments'][number], at: 'start' | 'end'): Point {
  if (!isArc(segment)) {
    const length = distance(from, segment.to);
    return { x: (segment.to.x - from.x) / length, y: (segment.to.y - from.y) / length };
  }
  const place = at === 'start' ? from : segment.to;
  const radius = distance(place, segment.centre);
  const sense = Math.sign(segment.turn) / radius;
  return { x: -(place.y - segment.centre.y) * sense, y: (place.x - segment.centre.x) * sense };
}

describe('windows', () => {
  it('close, lie between hub and rim, and run anticlockwise', () =>
    eachWindow((window, { rimRadius, hubRadius }) => {
      expect(distance(window.start, endOf(window))).toBeLessThan(1e-9 * rimRadius);
      expect(areaOf(window)).toBeGreaterThan(0);
      for (const { x, y } of flattened(window, rimRadius / 1e4)) {
        expect(Math.hypot(x, y)).toBeLessThan(rimRadius * (1 + 1e-9));
        expect(Math.hypot(x, y)).toBeGreaterThan(hubRadius * (1 - 1e-4));
      }
    }));

  it('have fillets that run smoothly into line and arc', () =>
    eachWindow((window, { filletRadius }) => {
      if (filletRadius === 0) return expect(window.segments).toHaveLength(4);
      expect(window.segments).toHaveLength(8);
      let from = window.start;
      window.segments.forEach((segment, i) => {
        const next = window.segments[(i + 1) % 8] as Path['segments'][number];
        const [end, start] = [heading(from, segment, 'end'), heading(segment.to, next, 'start')];
        expect(end.x * start.x + end.y * start.y).toBeGreaterThan(1 - 1e-6);
        from = segment.to;
      });
      return undefined;
    }));

  it('leave arms as wide as asked: no place of a window is nearer to an arm’s middle than its side', () =>
    eachWindow((window, wheel) => {
      const lean = Math.tan((taperHalfAngle(wheel) * Math.PI) / 180);
      const rimAlong = Math.sqrt(wheel.rimRadius ** 2 - wheel.widthAtRim ** 2 / 4);
      const hubAlong = Math.sqrt(wheel.hubRadius ** 2 - wheel.widthAtHub ** 2 / 4);
      for (let arm = 0; arm < wheel.arms; arm++)
        for (const { x, y } of flattened(turnedPath(window, (2 * Math.PI * arm) / wheel.arms), 0.01)) {
          if (x < hubAlong) continue;
          const halfWidth = wheel.widthAtRim / 2 + (rimAlong - x) * lean;
          expect(Math.abs(y)).toBeGreaterThan(halfWidth - 1e-7 * wheel.rimRadius);
        }
    }));

  // A third opinion: the sharp window shrunk by the fillet's radius and grown again by clipper2, round at every join.
  it('have the area of a sharp window shrunk and grown again, by a polygon library', () => {
    const sharp = windowsOf({ ...classWheel, filletRadius: 0 });
    for (const filletRadius of [0.3, 0.8, 1.5]) {
      const round = windowsOf({ ...classWheel, filletRadius });
      if ('closed' in sharp || 'closed' in round) throw new Error('the class wheel has windows');
      const [from, to] = [sharp.windows[0] as Path, round.windows[0] as Path];
      const outline = [flattened(from, 1e-5).map(({ x, y }) => ({ x, y }))];
      const inner = inflatePathsD(outline, -filletRadius, JoinType.Round, EndType.Polygon, 2, 6, 1e-5);
      const outer = inflatePathsD(inner, filletRadius, JoinType.Round, EndType.Polygon, 2, 6, 1e-5);
      const area = Math.abs(outer.reduce((sum, path) => sum + areaD(path), 0));
      expect(area).toBeCloseTo(areaOf(to), 2);
      expect(areaOf(from) - areaOf(to)).toBeGreaterThan(0.05);
    }
  });

  it('grow as the square of the wheel, and their inertia as the fourth power', () => {
    fc.assert(
      fc.property(wheels, share(0.5, 3), (wheel, times) => {
        const larger = {
          arms: wheel.arms,
          rimRadius: wheel.rimRadius * times,
          hubRadius: wheel.hubRadius * times,
          widthAtRim: wheel.widthAtRim * times,
          widthAtHub: wheel.widthAtHub * times,
          filletRadius: wheel.filletRadius * times,
        };
        const [one, other] = [windowsOf(wheel), windowsOf(larger)];
        if ('closed' in one || 'closed' in other) return;
        const [a, b] = [removed(one.windows), removed(other.windows)];
        expect(b.area / a.area / times ** 2).toBeCloseTo(1, 6);
        expect(b.moment / a.moment / times ** 4).toBeCloseTo(1, 6);
      }),
    );
  });
});

const classWheel: Crossing = {
  arms: 5,
  rimRadius: 20.4,
  hubRadius: 6,
  widthAtRim: 3,
  widthAtHub: 4.5,
  filletRadius: 0.8,
};

describe('what closes a window', () => {
  it.each<[string, Partial<Crossing>]>([
    ['hub', { widthAtHub: 7.2 }],
    ['rim', { widthAtRim: 25, arms: 5, hubRadius: 6, widthAtHub: 4.5 }],
    ['side', { arms: 3, hubRadius: 15, widthAtHub: 1, widthAtRim: 34 }],
    ['fillets', { filletRadius: 4 }],
    ['fillets', { filletRadius: 9 }],
    ['fillets', { filletRadius: 30 }],
  ])('%s', (closed, change) => expect(windowsOf({ ...classWheel, ...change })).toEqual({ closed }));

  it('a wheel that is crossed out stays so with narrower arms or smaller fillets', () => {
    fc.assert(
      fc.property(wheels, share(0.3, 1), (wheel, less) => {
        if ('closed' in windowsOf(wheel)) return;
        expect(windowsOf({ ...wheel, filletRadius: wheel.filletRadius * less })).toHaveProperty('windows');
        const narrower = { widthAtRim: wheel.widthAtRim * less, widthAtHub: wheel.widthAtHub * less };
        expect(windowsOf({ ...wheel, ...narrower, filletRadius: 0 })).toHaveProperty('windows');
      }),
    );
  });

  it('says so in words, and proves it', () => {
    const given = {
      arms: 5,
      rimInsideDiameter: 40.8,
      hubDiameter: 12,
      armWidthAtRim: 3,
      armWidthAtHub: 4.5,
      filletRadius: 4,
    };
    const { found, checks } = work('crossing.layout', given);
    expect(found).toMatchObject({ possible: false, windows: [], areaRemoved: null });
    expect(found.reason).toMatch(/fillets do not fit/);
    expect(checks.every(({ agrees }) => agrees)).toBe(true);
    expect(work('crossing.layout', { ...given, arms: 6, hubDiameter: 9 }).found.reason).toMatch(
      /meet at the hub/,
    );
  });

  // Both routes over wheels of all proportions, closed ones too: a disagreement throws.
  it('by both routes alike', () => {
    let open = 0;
    fc.assert(
      fc.property(wheels, (wheel) => {
        const given = {
          arms: wheel.arms,
          rimInsideDiameter: 2 * wheel.rimRadius,
          hubDiameter: 2 * wheel.hubRadius,
          armWidthAtRim: Math.max(0.05, wheel.widthAtRim),
          armWidthAtHub: Math.max(0.05, wheel.widthAtHub),
          filletRadius: wheel.filletRadius,
        };
        if (work('crossing.layout', given).found.possible) open++;
      }),
      { numRuns: 2000 },
    );
    expect(open).toBeGreaterThan(400);
    expect(open).toBeLessThan(1950);
  });
});

describe('polar moment', () => {
  const circle = (radius: number): Path => ({
    start: { x: radius, y: 0 },
    segments: [0, 1, 2].map((third) => {
      const angle = ((third + 1) * 2 * Math.PI) / 3;
      const to = { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
      return { to, centre: { x: 0, y: 0 }, turn: (2 * Math.PI) / 3 };
    }),
  });
  it('of a disc is πr⁴/2, and off the axis by the parallel-axis rule', () => {
    fc.assert(
      fc.property(share(0.1, 50), share(-80, 80), share(-80, 80), (radius, x, y) => {
        const area = Math.PI * radius ** 2;
        const moment = polarMomentOf(shifted(circle(radius), { x, y }));
        const expected = (area * radius ** 2) / 2 + area * (x * x + y * y);
        expect(Math.abs(moment / expected - 1)).toBeLessThan(1e-9);
      }),
    );
  });
  it('of a square of side a about its corner is 2a⁴/3', () => {
    const square: Path = {
      start: { x: 0, y: 0 },
      segments: [
        { to: { x: 6, y: 0 } },
        { to: { x: 6, y: 6 } },
        { to: { x: 0, y: 6 } },
        { to: { x: 0, y: 0 } },
      ],
    };
    expect(polarMomentOf(square)).toBeCloseTo((2 * 6 ** 4) / 3, 9);
  });
});

describe('pegs', () => {
  it('taper evenly along the arm, and are as wide as a parallel arm', () => {
    fc.assert(
      fc.property(wheels, (wheel) => {
        const [one = 0, two = 0, three = 0] = pegDiameters(
          wheel,
          [2, 5, 8].map((x) => (x * wheel.rimRadius) / 10),
        );
        expect(one - two).toBeCloseTo(two - three, 7);
        const parallel = { ...wheel, widthAtRim: wheel.widthAtHub };
        const [peg = 0] = pegDiameters(parallel, [wheel.rimRadius]);
        if (wheel.widthAtHub < wheel.rimRadius) expect(peg).toBeCloseTo(wheel.widthAtHub, 9);
      }),
    );
  });

  it('that would stand past where the sides meet are refused', () => {
    const arm = { armWidthAtRim: 3, armWidthAtHub: 4.5, rimRadius: 20.4, hubRadius: 6 };
    expect(() => work('crossing.pegs', { ...arm, pegRadii: [8, 60] })).toThrow(/^pegRadii: 60 .*not met/);
  });
});

it('a ring weighs what its disc does less the disc of its hole', () => {
  fc.assert(
    fc.property(share(1, 500), share(0, 0.99), share(0.1, 20), (diameter, part, thickness) => {
      const hole = part * diameter;
      expect(discMass(diameter, thickness, hole, 8.47)).toBeCloseTo(
        discMass(diameter, thickness, 0, 8.47) - discMass(hole, thickness, 0, 8.47),
        6,
      );
    }),
  );
});

it('pegs by both routes, for arms of all proportions', () => {
  let answered = 0;
  fc.assert(
    fc.property(wheels, fc.array(share(0.05, 2.9), { minLength: 1, maxLength: 4 }), (wheel, pegs) => {
      const given = {
        armWidthAtRim: Math.max(0.05, wheel.widthAtRim),
        armWidthAtHub: Math.max(0.05, wheel.widthAtHub),
        rimRadius: wheel.rimRadius,
        hubRadius: wheel.hubRadius,
        pegRadii: pegs.map((peg) => peg * wheel.rimRadius),
      };
      try {
        work('crossing.pegs', given);
        answered++;
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
      }
    }),
    { numRuns: 1000 },
  );
  expect(answered).toBeGreaterThan(300);
});
