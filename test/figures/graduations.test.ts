import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/diagnostics/errors.js';
import { drawFigure } from '../../src/figures/index.js';
import { handout } from './class-wheel.js';

const INCH = { ...handout, units: 'inch' } as const;

/** Upright graduations as they are drawn: where along the scale, the edge they rise from, and how far. */
function uprights(svg: string): { x: number; edge: number; to: number }[] {
  return [...svg.matchAll(/M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)/g)]
    .map(([, x, y, x2, y2]) => [x, y, x2, y2].map(Number) as [number, number, number, number])
    .filter(([x, , x2]) => x === x2)
    .map(([x, edge, , to]) => ({ x, edge, to }));
}

/** Those of the close-up, which stands under the whole view, parted in main scale and vernier. */
function closeUp(svg: string) {
  const all = uprights(svg);
  const edge = Math.max(...all.map((one) => one.edge));
  const own = all.filter((one) => one.edge === edge);
  return { main: own.filter(({ to }) => to < edge), lines: own.filter(({ to }) => to > edge) };
}

describe('vernier', () => {
  it.each([
    [27.34, handout, 2],
    [27.3, handout, 0],
    [6.02, handout, 1],
    [1.318 * 25.4, INCH, 3],
    [0.224 * 25.4, INCH, 4],
  ])('at %d mm has one line of the close-up in step, and the line it says', (reading, style, after) => {
    const { svg, label } = drawFigure('vernier', { reading }, style);
    const { main, lines } = closeUp(svg);
    const off = lines.map(({ x }) => Math.min(...main.map((one) => Math.abs(one.x - x))));
    const inStep = lines.filter((_, at) => (off[at] ?? 1) < 1e-3).map(({ x }) => x);
    expect(inStep).toHaveLength(1);
    // The others stand off by what a line is worth, twenty times as large, and more.
    const worth = style === INCH ? 0.0254 : 0.02;
    expect(off.filter((one) => one > 1e-3).toSorted((a, b) => a - b)[0]).toBeCloseTo(20 * worth, 3);
    const numbered = lines.filter(({ to, edge }) => to - edge > 5).map(({ x }) => x);
    expect(lines.filter(({ x }) => x > (numbered[0] ?? 0) && x <= (inStep[0] ?? 0))).toHaveLength(after);
    if (after > 0) expect(label).toContain(`line ${after} after `);
  });

  it('has its nought as far past the main line as the reading says', () => {
    const { svg } = drawFigure('vernier', { reading: 27.34 }, handout);
    const whole = uprights(svg).filter(({ edge }) => edge === 0);
    const main = whole.filter(({ to }) => to < 0).map(({ x }) => x);
    expect(whole.filter(({ x, to }) => to > 0 && x === 0)).toHaveLength(1);
    expect(Math.max(...main.filter((x) => x <= 0))).toBeCloseTo(-2 * 0.34, 4);
    expect(whole.filter(({ to }) => to > 0)).toHaveLength(51);
  });

  it('tells the inch whose tenths are seen', () => {
    expect(drawFigure('vernier', { reading: 1.318 * 25.4 }, INCH).svg).toContain(
      'main scale, past 1\u2009in',
    );
    expect(drawFigure('vernier', { reading: 0.318 * 25.4 }, INCH).svg).toContain('main scale, in<');
  });
});

describe('micrometer', () => {
  it.each([
    [5.78, 6, 6, 0.28],
    [5.28, 6, 5, 0.28],
    [0.49, 1, 0, 0.49],
    [11, 12, 11, 0],
  ])(
    'at %d mm shows its whole and half millimetres, the last of them so far from the thimble',
    (reading, whole, half, past) => {
      const { svg } = drawFigure('micrometer', { reading }, handout);
      const lines = uprights(svg).filter(({ edge, to }) => edge === 0 && Math.abs(to) < 5);
      expect(lines.filter(({ to }) => to < 0)).toHaveLength(whole);
      expect(lines.filter(({ to }) => to > 0)).toHaveLength(half);
      expect(Math.max(...lines.map(({ x }) => x))).toBeCloseTo(-5 * past, 4);
    },
  );

  it('shows the line of an inch micrometer that has only just come out', () => {
    const { svg } = drawFigure('micrometer', { reading: 0.226 * 25.4 }, INCH);
    const lines = uprights(svg).filter(({ edge, to }) => edge === 0 && to < 0);
    expect(lines).toHaveLength(10);
    expect(Math.max(...lines.map(({ x }) => x))).toBeCloseTo(-5 * 0.0254, 4);
  });

  it('sets the thimble’s line on the datum line, and the higher numbers above', () => {
    const { svg } = drawFigure('micrometer', { reading: 5.78 }, handout);
    expect(svg).toMatch(/M0 0L4 0(?=[M"])/);
    const level = (n: string) => Number(new RegExp(`y="(-?[\\d.]+)"[^>]*>${n}</text>`).exec(svg)?.[1]);
    expect(level('30')).toBeLessThan(level('25'));
  });
});

it.each([
  ['vernier', 27.33, handout],
  ['vernier', 27.34, INCH],
  ['micrometer', 5.785, handout],
  ['micrometer', 5.78, INCH],
])('%s refuses %d mm, which stands between two lines', (name, reading, style) => {
  expect(() => drawFigure(name, { reading }, style)).toThrow(InputError);
});
