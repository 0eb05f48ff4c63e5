import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/figures/drafting/number.js';
import { Trace } from '../../../src/figures/drafting/trace.js';

const o = { x: 0, y: 0 };

describe('Trace', () => {
  it('keeps an arc an arc', () => {
    const { d } = new Trace().moveTo({ x: 0, y: -10 }).arc(o, 10, 0, Math.PI / 2);
    expect(d).toBe('M0 -10A10 10 0 0 1 10 0');
  });

  it('takes the long way round when asked', () => {
    expect(new Trace().arc(o, 10, 0, 1.5 * Math.PI).d).toBe('M0 -10A10 10 0 1 1 -10 0');
  });

  it('turns against the clock when the second bearing is smaller', () => {
    expect(new Trace().arc(o, 10, Math.PI / 2, 0).d).toBe('M10 0A10 10 0 0 0 0 -10');
  });

  it('draws a line to an arc that begins elsewhere', () => {
    expect(new Trace().moveTo(o).arc(o, 10, 0, Math.PI / 2).d).toBe('M0 0L0 -10A10 10 0 0 1 10 0');
  });

  it('remembers an arc as points that all lie on it', () => {
    const [run = []] = new Trace().arc({ x: 3, y: 4 }, 10, 0.3, 2).runs;
    expect(run.length).toBeGreaterThan(8);
    for (const { x, y } of run) expect(Math.hypot(x - 3, y - 4)).toBeCloseTo(10, 9);
  });

  it.each(['clockwise', 'anticlockwise'] as const)(
    'bend() %s remembers points one radius from one centre',
    (sense) => {
      const [run = []] = new Trace().moveTo(o).bend({ x: 6, y: 2 }, 5, sense).runs;
      const rise = (Math.sqrt(25 - 10) / Math.sqrt(40)) * (sense === 'clockwise' ? 1 : -1);
      const centre = { x: 3 - 2 * rise, y: 1 + 6 * rise };
      for (const { x, y } of run) expect(Math.hypot(x - centre.x, y - centre.y)).toBeCloseTo(5, 9);
      expect(run.at(-1)).toEqual({ x: 6, y: 2 });
    },
  );

  it('bulges to the left of the way it goes when it bends clockwise', () => {
    const [run = []] = new Trace().moveTo(o).bend({ x: 10, y: 0 }, 6, 'clockwise').runs;
    expect(Math.min(...run.map(({ y }) => y))).toBeCloseTo(-(6 - Math.sqrt(36 - 25)), 1);
  });

  it('will not draw before it is set down', () => {
    expect(() => new Trace().lineTo(o)).toThrow('moveTo');
  });
});

describe('decimal', () => {
  it.each([
    [0.123456, '0.1235'],
    [-0.00001, '0'],
    [-0, '0'],
    [100, '100'],
    [2.5e-7, '0'],
  ])('writes %d as %s', (value, text) => expect(decimal(value)).toBe(text));
});
