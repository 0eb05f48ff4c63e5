import { areaD } from 'clipper2-ts';
import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { areaOf, endOf, flattened, isArc, joined, throughPoints } from '../../src/geometry/curves/path.js';
import { distance } from '../../src/geometry/curves/point.js';
import { associationScrew } from '../../src/geometry/screws/british-association.js';
import { flankOf, reach } from '../../src/geometry/screws/measure.js';
import {
  roundingRadius,
  sharpHeight,
  type ThreadShape,
  threadGroove,
} from '../../src/geometry/screws/profile.js';
import { threadSizes } from '../../src/geometry/screws/thread.js';
import { overWires, wiresFor } from '../../src/geometry/screws/wires.js';
import { association } from '../../src/handbook/screws/british-sizes.js';

/** A thread with so much of its height off at crest and root. */
function shaped(pitch: number, angle: number, crest: number, root: number, round: boolean): ThreadShape {
  const height = sharpHeight(pitch, angle);
  return {
    pitch,
    angle,
    crest: { off: crest * height, round },
    root: { off: root * height, round },
  };
}

const anyShape = fc
  .tuple(
    fc.double({ min: 0.1, max: 10, noNaN: true }),
    fc.double({ min: 40, max: 70, noNaN: true }),
    fc.double({ min: 0.05, max: 0.2, noNaN: true }),
    fc.double({ min: 0.05, max: 0.2, noNaN: true }),
    fc.boolean(),
  )
  .map((parts) => shaped(...parts));

describe('the groove of a thread', () => {
  it('is one pitch wide, the same on both sides, and smooth where it is rounded', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const groove = threadGroove(shape);
        expect(groove.start.x).toBeCloseTo(-shape.pitch / 2, 12);
        expect(endOf(groove).x).toBeCloseTo(shape.pitch / 2, 12);
        const points = flattened(groove, 1e-4);
        const mirrored = points.map(({ x, y }) => ({ x: -x, y })).reverse();
        points.forEach((p, i) => expect(distance(p, mirrored[i] ?? p)).toBeLessThan(1e-9));
        // An arc that touches a flank has its centre square to the flank’s end.
        const { foot, top } = flankOf(groove);
        const arcs = groove.segments.filter(isArc);
        expect(arcs.length).toBe(shape.root.round ? 4 : 0);
        for (const { centre } of arcs.slice(-2))
          for (const end of [foot, top])
            if (Math.abs(distance(centre, end) - roundingRadius(shape.root.off, shape.angle)) < 1e-9)
              expect(
                ((centre.x - end.x) * (top.x - foot.x) + (centre.y - end.y) * (top.y - foot.y)) / shape.pitch,
              ).toBeCloseTo(0, 9);
      }),
    );
  });

  it('encloses the area that clipper finds by points', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const groove = threadGroove(shape);
        const { highest } = reach(groove);
        const lid = throughPoints([endOf(groove), { x: 0, y: highest }, groove.start]);
        const closed = joined(groove, lid);
        const area = Math.abs(areaD(flattened(closed, 1e-6 * shape.pitch)));
        expect(Math.abs(areaOf(closed)) / area).toBeCloseTo(1, 4);
      }),
      { numRuns: 30 },
    );
  });

  it('is as deep as its triangle less both corners, whatever they are, and grows with its pitch', () => {
    fc.assert(
      fc.property(anyShape, fc.double({ min: 0.2, max: 5, noNaN: true }), (shape, by) => {
        const diameter = 20 * shape.pitch;
        const sizes = threadSizes(diameter, shape);
        const height = sharpHeight(shape.pitch, shape.angle);
        expect(sizes.sharpHeight / height).toBeCloseTo(1, 12);
        expect(sizes.depth).toBeCloseTo(height - shape.crest.off - shape.root.off, 10);
        const larger = threadSizes(by * diameter, {
          ...shape,
          pitch: by * shape.pitch,
          crest: { ...shape.crest, off: by * shape.crest.off },
          root: { ...shape.root, off: by * shape.root.off },
        });
        expect(larger.pitchDiameter / sizes.pitchDiameter).toBeCloseTo(by, 9);
        expect(larger.depth / sizes.depth).toBeCloseTo(by, 9);
      }),
    );
  });

  it('has the Whitworth and BA proportions to 12 figures by high-precision arithmetic', () => {
    const big = create(all ?? {}, { number: 'BigNumber', precision: 40 });
    const value = (formula: string): number => Number(big.evaluate(formula).toString());
    const whitworth = shaped(1, 55, 1 / 6, 1 / 6, true);
    expect(threadSizes(10, whitworth).depth).toBeCloseTo(value('1/(3*tan(27.5/180*pi))'), 12);
    expect(roundingRadius(whitworth.root.off, 55)).toBeCloseTo(
      value('sin(27.5/180*pi)/(12*tan(27.5/180*pi)*(1 - sin(27.5/180*pi)))'),
      12,
    );
    const off = (sharpHeight(1, 47.5) - 0.6) / 2;
    expect(roundingRadius(off, 47.5)).toBeCloseTo(
      value('(1/(2*tan(23.75/180*pi)) - 0.6)/2*sin(23.75/180*pi)/(1 - sin(23.75/180*pi))'),
      12,
    );
  });
});

describe('wires in a thread', () => {
  it('rest on both flanks without biting into the metal, and stand higher the thicker they are', () => {
    fc.assert(
      fc.property(anyShape, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (shape, share) => {
        const diameter = 20 * shape.pitch;
        const { smallest, largest, best } = wiresFor(shape);
        fc.pre(largest > smallest);
        const wire = smallest + share * (largest - smallest);
        const size = overWires(diameter, shape, wire);
        const groove = threadGroove(shape);
        // Where the wire’s centre stands above the crests, and so in the groove’s own measure.
        const centre = { x: 0, y: (size - wire - diameter) / 2 + reach(groove).highest };
        const clear = flattened(groove, 1e-5 * shape.pitch).map((p) => distance(p, centre) - wire / 2);
        expect(Math.min(...clear)).toBeGreaterThan(-1e-4 * shape.pitch);
        expect(size).toBeGreaterThan(diameter - 1e-9);
        expect(overWires(diameter, shape, smallest + share * 0.5 * (largest - smallest))).toBeLessThan(size);
        expect(best).toBeLessThan(largest);
      }),
      { numRuns: 60 },
    );
  });

  it('the best wire hardly minds an error of the angle; a thicker or thinner one does', () => {
    const pitch = 1.5;
    /** Size over a wire of a thread of the same pitch diameter, with its flanks at another angle. */
    const over = (angle: number, wire: number): number => {
      const shape = shaped(pitch, angle, 1 / 8, 1 / 8, false);
      return overWires(10, shape, wire) - threadSizes(10, shape).pitchDiameter;
    };
    const { best } = wiresFor(shaped(pitch, 60, 1 / 8, 1 / 8, false));
    const change = (wire: number) => Math.abs(over(60.5, wire) - over(60, wire));
    expect(change(best)).toBeLessThan(5e-5);
    for (const other of [0.8, 1.3]) expect(change(other * best)).toBeGreaterThan(10 * change(best));
  });
});

it('the rule of the BA series makes every size of the printed table', () => {
  association.forEach(([diameter, pitch], number) =>
    expect(associationScrew(number)).toEqual({ diameter, pitch }),
  );
});
