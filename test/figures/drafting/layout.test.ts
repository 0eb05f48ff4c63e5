import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hatch } from '../../../src/figures/drafting/hatch.js';
import { scaleName } from '../../../src/figures/drafting/scale.js';
import { spread } from '../../../src/figures/drafting/spread.js';
import { fittedDash } from '../../../src/figures/drafting/strokes.js';
import { wrapped } from '../../../src/figures/drafting/wrap.js';
import { Pen } from '../../../src/figures/pen.js';
import { handout } from '../class-wheel.js';

const number = fc.double({ min: -50, max: 50, noNaN: true });

describe('spread()', () => {
  it('parts labels by their sizes, keeps their order, and moves none that has room', () => {
    const labels = fc.array(fc.tuple(number, fc.double({ min: 0.1, max: 8, noNaN: true })), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(labels, (some) => {
        const sorted = [...some].sort((a, b) => a[0] - b[0]);
        const wanted = sorted.map(([at]) => at);
        const sizes = sorted.map(([, size]) => size);
        const places = spread(wanted, sizes);
        const free = wanted.every(
          (at, i) => i === 0 || at - (wanted[i - 1] ?? 0) >= ((sizes[i] ?? 0) + (sizes[i - 1] ?? 0)) / 2,
        );
        places.forEach((place, i) => {
          if (i > 0) {
            const least = ((sizes[i] ?? 0) + (sizes[i - 1] ?? 0)) / 2;
            expect(place - (places[i - 1] ?? 0)).toBeGreaterThanOrEqual(least - 1e-9);
          }
          if (free) expect(place).toBeCloseTo(wanted[i] ?? 0, 9);
        });
      }),
    );
  });

  it('moves two that collide the same way apart', () => {
    expect(spread([0, 1], [3, 3])).toEqual([-1, 2]);
  });
});

describe('hatch()', () => {
  it('keeps within its region and out of its holes', () => {
    const pen = new Pen(handout);
    const square = (r: number) => [
      { x: -r, y: -r },
      { x: r, y: -r },
      { x: r, y: r },
      { x: -r, y: r },
    ];
    hatch(pen, [square(10), square(4)]);
    expect(pen.marks.ink.length).toBeGreaterThan(20);
    for (const { points } of pen.marks.ink) {
      const [a, b] = points as [{ x: number; y: number }, { x: number; y: number }];
      const middle = Math.max(Math.abs((a.x + b.x) / 2), Math.abs((a.y + b.y) / 2));
      expect(middle).toBeGreaterThan(4 - 1e-9);
      for (const { x, y } of [a, b])
        expect(Math.max(Math.abs(x), Math.abs(y))).toBeLessThanOrEqual(10 + 1e-9);
      // Rising to the right, as 45 degrees does.
      expect((b.y - a.y) / (b.x - a.x)).toBeCloseTo(-1, 9);
    }
  });
});

describe('fittedDash()', () => {
  it('goes a whole number of times round a circle', () => {
    const round = 2 * Math.PI * 24;
    const period = fittedDash('centre', round, true).reduce((a, b) => a + b, 0);
    expect(round / period).toBeCloseTo(Math.round(round / period), 9);
  });

  it('ends an open line on a long dash', () => {
    const dash = fittedDash('centre', 40, false);
    const period = dash.reduce((a, b) => a + b, 0);
    expect((40 - (dash[0] ?? 0)) % period).toBeCloseTo(0, 6);
  });

  it('leaves a full line full', () => expect(fittedDash('outline', 40, false)).toEqual([]));
});

describe('wrapped()', () => {
  it('breaks between words and loses none', () => {
    const pen = new Pen(handout);
    const lines = wrapped(pen, 'one two three four five six', 20);
    expect(lines.join(' ')).toBe('one two three four five six');
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(pen.textSize(line).width).toBeLessThanOrEqual(20);
  });
});

describe('scaleName()', () => {
  it.each([
    [1, 'true scale'],
    [20, '20 : 1'],
    [0.2, '1 : 5'],
  ])('says %d as %s', (scale, name) => expect(scaleName(scale)).toBe(name));
});
