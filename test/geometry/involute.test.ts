import fc from 'fast-check';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { expect, it } from 'vitest';
import { areaOf, flattened, type Path } from '../../src/geometry/curves/path.js';
import { distance, type Point, polar, turned } from '../../src/geometry/curves/point.js';
import { spaceSide, toothSide, wheelFlanks } from '../../src/geometry/involute/flank.js';
import { inv, involutePoint, rollTo } from '../../src/geometry/involute/involute.js';
import { involuteOutline } from '../../src/geometry/involute/outline.js';
import { overTwoPins, pinInSpace, pinsThatServe } from '../../src/geometry/involute/pins.js';
import { basicRack } from '../../src/geometry/involute/rack.js';
import { rackRoot } from '../../src/geometry/involute/root.js';
import { spanOver, spansThatServe, usualSpan } from '../../src/geometry/involute/span.js';
import { undercutLimit } from '../../src/geometry/involute/undercut.js';
import { involuteSizes } from '../../src/geometry/involute/wheel.js';

const DEGREE = Math.PI / 180;
const COUNTS = [5, 6, 8, 9, 12, 17, 18, 25, 40, 41, 120];
const ANGLES = [10, 14.5, 20, 25, 30].map((degrees) => degrees * DEGREE);
const wheels = ANGLES.flatMap((angle) => COUNTS.map((teeth) => [teeth, angle] as const));

it('follows the end of a string as it is unwound, integrated in short steps', () => {
  // The taut end moves at right angles to the string, as far as the string is long times the turn.
  const steps = 20_000;
  const turn = 1.2 / steps;
  let end: Point = { x: 10, y: 0 };
  for (let i = 0; i < steps; i++) {
    const roll = (i + 0.5) * turn;
    end = { x: end.x + 10 * roll * turn * Math.cos(roll), y: end.y + 10 * roll * turn * Math.sin(roll) };
  }
  expect(distance(end, involutePoint(10, 1.2))).toBeLessThan(1e-7);
});

it('agrees with forty figures on the involute function', () => {
  const { evaluate } = create(all as FactoryFunctionMap, { number: 'BigNumber', precision: 40 });
  for (const degrees of [1, 5, 14.5, 20, 25, 30, 45, 60, 80]) {
    const exact = Number(evaluate(`tan(${degrees * DEGREE}) - ${degrees * DEGREE}`));
    expect(Math.abs(inv(degrees * DEGREE) / exact - 1)).toBeLessThan(1e-10);
  }
});

it('places an involute at the polar angle inv a where its radius is base over cos a', () => {
  for (const angle of ANGLES) {
    const { x, y } = involutePoint(7, Math.tan(angle));
    expect(Math.hypot(x, y)).toBeCloseTo(7 / Math.cos(angle), 12);
    expect(Math.atan2(y, x)).toBeCloseTo(inv(angle), 12);
  }
});

it('makes tooth and space equal on the pitch circle, and the flanks meet pitch, tip and base circles', () => {
  for (const [teeth, angle] of wheels) {
    const flanks = wheelFlanks(teeth, 1, angle);
    const atPitch = rollTo(flanks.baseRadius, teeth / 2);
    for (const side of [toothSide, spaceSide]) {
      const { x, y } = side(flanks, atPitch);
      expect((Math.atan2(y, x) * teeth) / 2).toBeCloseTo(Math.PI / 4, 9);
    }
    const tip = toothSide(flanks, flanks.to);
    expect(2 * Math.hypot(tip.x, tip.y)).toBeCloseTo(involuteSizes(teeth, 1, angle).outsideDiameter, 9);
    expect(2 * flanks.baseRadius).toBeCloseTo(involuteSizes(teeth, 1, angle).baseDiameter, 9);
  }
});

/** Places all round an outline, chords within 0.0001 mm. */
const places = (path: Path): Point[] => flattened(path, 1e-4);

it('spans on the outline what the anvils measure: the greatest height of k teeth, both sides', () => {
  for (const [teeth, angle] of wheels) {
    const flanks = wheelFlanks(teeth, 1, angle);
    const spanned = usualSpan(teeth, angle);
    // Of the whole wheel only the teeth between the anvils: half a pitch further is the middle of a space.
    const reach = (spanned * Math.PI) / teeth;
    // The anvils stand outside the roots.
    const foot = flanks.baseRadius * Math.hypot(1, flanks.from);
    const outline = places(involuteOutline(teeth, 1, angle)).map((p) =>
      spanned % 2 === 1 ? p : turned(p, Math.PI / teeth),
    );
    const between = outline.filter(
      (p) => Math.hypot(p.x, p.y) > foot && Math.abs(Math.atan2(p.y, p.x)) < reach,
    );
    const span = Math.max(...between.map(({ y }) => y)) - Math.min(...between.map(({ y }) => y));
    expect(Math.abs(span - spanOver(flanks, spanned)), `${teeth} ${angle / DEGREE} ${spanned}`).toBeLessThan(
      0.0045,
    );
  }
});

it('one tooth more adds the base pitch, and the usual count always lies on the flanks', () => {
  for (const angle of ANGLES)
    for (let teeth = 5; teeth <= 1000; teeth += teeth < 60 ? 1 : 47) {
      const flanks = wheelFlanks(teeth, 1, angle);
      const usual = usualSpan(teeth, angle);
      const { least, most } = spansThatServe(flanks);
      expect(usual).toBeGreaterThanOrEqual(least);
      expect(usual).toBeLessThanOrEqual(most);
      expect(spanOver(flanks, usual + 1) - spanOver(flanks, usual)).toBeCloseTo(Math.PI * Math.cos(angle), 9);
    }
});

it('seats a pin so that no part of the true outline is nearer to its middle than half its diameter', () => {
  for (const [teeth, angle] of wheels) {
    const flanks = wheelFlanks(teeth, 1, angle);
    const root = rackRoot(teeth, 1, angle);
    const { least, most } = pinsThatServe(flanks);
    for (const share of [0, 0.1, 0.5, 1]) {
      const diameter = least + (Math.min(most, 3) - least) * share;
      if (diameter > most) continue;
      const pin = pinInSpace(flanks, diameter);
      const middle = { x: pin?.centre ?? 0, y: 0 };
      let nearest = middle.x - flanks.rootRadius;
      for (let i = 0; i <= 2000; i++) {
        const flank = spaceSide(flanks, flanks.from + ((flanks.to - flanks.from) * i) / 2000);
        nearest = Math.min(nearest, distance(middle, flank));
        nearest = Math.min(nearest, distance(middle, root.at((root.meets * i) / 2000)));
      }
      expect(nearest, `${teeth} ${angle} ${diameter}`).toBeCloseTo(diameter / 2, 5);
      expect(middle.x + diameter / 2).toBeGreaterThanOrEqual(flanks.tipRadius - 1e-9);
    }
    expect(pinInSpace(flanks, least * 0.999)).toBeUndefined();
    expect(pinInSpace(flanks, most * 1.001)).toBeUndefined();
  }
});

it('over two pins: a larger pin reads more, and twice the size reads twice', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 8, max: 300 }),
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      fc.double({ min: 1.7, max: 1.9, noNaN: true }),
      (teeth, module, pin) => {
        const over = (m: number, diameter: number): number => {
          const seated = pinInSpace(wheelFlanks(teeth, m, 20 * DEGREE), diameter);
          return seated ? overTwoPins(teeth, seated) : Number.NaN;
        };
        expect(over(module, pin * module)).toBeLessThan(over(module, pin * module * 1.01));
        expect(over(2 * module, 2 * pin * module) / over(module, pin * module)).toBeCloseTo(2, 9);
      },
    ),
  );
});

it('undercuts exactly the counts that the limit says', () => {
  for (const angle of ANGLES) {
    const limit = undercutLimit(angle, basicRack(angle).straightTo);
    for (let teeth = 5; teeth <= 80; teeth++)
      expect(rackRoot(teeth, 1, angle).undercut, `${teeth} ${angle / DEGREE}`).toBe(teeth < limit - 1e-9);
  }
});

it('makes an outline whose area grows with every tooth and with the square of the module', () => {
  for (const angle of ANGLES) {
    const area = (teeth: number, module = 1): number => areaOf(involuteOutline(teeth, module, angle, 1e-4));
    for (const teeth of COUNTS) {
      expect(area(teeth + 1)).toBeGreaterThan(area(teeth));
      expect(area(teeth, 3) / area(teeth)).toBeCloseTo(9, 3);
    }
  }
});

it('stands between root and tip circles', () => {
  for (const [teeth, angle] of wheels) {
    const { outsideDiameter, rootDiameter } = involuteSizes(teeth, 1, angle);
    const radii = places(involuteOutline(teeth, 1, angle)).map((p) => distance(p, polar(0, 0)));
    expect(2 * Math.max(...radii)).toBeCloseTo(outsideDiameter, 3);
    expect(2 * Math.min(...radii)).toBeCloseTo(rootDiameter, 2);
  }
});
