import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/diagnostics/errors.js';
import { drawFigure } from '../../src/figures/index.js';
import { templates } from './areas/templates.js';
import { handout } from './class-wheel.js';

const draw = (name: string, given: Record<string, unknown> = {}) =>
  drawFigure(name, { ...templates[name]?.typical, ...given }, handout);

const radii = (svg: string): number[] =>
  [...svg.matchAll(/<circle [^>]* r="([\d.]+)"/g)].map((match) => Number(match[1]));

/** Lines from one place to another, as they are written. */
const lines = (svg: string): number[][] =>
  [...svg.matchAll(/d="M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)"/g)].map((match) =>
    match.slice(1).map(Number),
  );

describe('a template at true scale', () => {
  it('crossing-template has tips, root and hole of their own radii, and the windows at the rim’s', () => {
    const { svg, scale } = draw('crossing-template');
    expect(scale).toBe('true scale');
    expect(radii(svg).filter((r) => r > 1)).toEqual([25.104, 22.744, 3]);
    const windows = svg.split('\n').filter((line) => line.includes('A20.4 20.4 0') && line.includes('Z"'));
    expect(windows).toHaveLength(5);
    for (const window of windows) expect(window).toMatch(/A7 7 0 .*|A1 1 0 /);
  });

  it('crossing-template has the same lines with its sizes and without', () => {
    const shapes = (svg: string): string[] =>
      svg.split('\n').filter((line) => /outline|0\.5"\/>$/.test(line));
    expect(shapes(draw('crossing-template', { sizes: 'no' }).svg)).toEqual(
      shapes(draw('crossing-template').svg),
    );
    expect(draw('crossing-template', { sizes: 'no' }).svg).not.toContain('<text');
  });

  it('crossing-template lets the blade in clear of rim and arms', () => {
    const { svg } = draw('crossing-template');
    const starts = [...svg.matchAll(/<circle cx="(\S+)" cy="(\S+)" r="0.75"/g)].map((match) =>
      Math.hypot(Number(match[1]), Number(match[2])),
    );
    expect(starts).toHaveLength(5);
    for (const away of starts) expect(away).toBeCloseTo(20.4 - 1.6, 3);
  });

  it('wheel-check has its three circles, a tooth for each, and 360 degrees', () => {
    const { svg } = draw('wheel-check');
    expect(radii(svg).slice(0, 4)).toEqual([25.104, 24, 22.744, 3]);
    const ring = radii(svg)[4] ?? 0;
    const fromRing = lines(svg).filter(([x = 0, y = 0]) => Math.abs(Math.hypot(x, y) - ring) < 1e-3);
    expect(fromRing).toHaveLength(360);
    expect(svg).toContain('>15</text>');
  });

  it('plate-pattern has every hole on its circle', () => {
    const { svg } = draw('plate-pattern');
    expect(radii(svg).sort((a, b) => a - b)).toEqual([10, 30, 37, 44, 51, 58, 65, 73]);
    expect(svg).toContain('M0 -66.5A1.5 1.5');
    expect(svg.match(/rotate\(/g)?.length).toBeGreaterThan(30);
  });

  it('printer-test is square, and its circle touches', () => {
    const { svg } = draw('printer-test');
    expect(svg).toContain('d="M0 0L100 0L100 100L0 100Z"');
    expect(svg).toContain('<circle cx="50" cy="50" r="50"');
    expect(
      lines(svg).filter(([a, b, c, d]) => Math.hypot((c ?? 0) - (a ?? 0), (d ?? 0) - (b ?? 0)) === 101.6),
    ).toHaveLength(2);
  });

  it('degree-disc is graduated to its edge', () => {
    const { svg } = draw('degree-disc');
    const edge = lines(svg).filter(([x = 0, y = 0]) => Math.abs(Math.hypot(x, y) - 75) < 1e-3);
    expect(edge).toHaveLength(360);
    expect(Math.max(...radii(svg))).toBe(75);
  });

  it('degree-vernier has twelve parts of fifty-five minutes, on the disc’s own edge', () => {
    const { svg } = draw('degree-vernier');
    const angles = lines(svg).map(([x = 0, y = 0]) => {
      expect(Math.hypot(x, y)).toBeCloseTo(75, 3);
      return (Math.atan2(x, -y) * 180) / Math.PI;
    });
    expect(angles).toHaveLength(13);
    for (const [at, angle] of angles.slice(1).entries())
      expect(angle - (angles[at] ?? 0)).toBeCloseTo(55 / 60, 3);
  });

  it('cutter-projection is twenty times the cutter, whatever the page', () => {
    const { svg, scale } = draw('cutter-projection');
    expect(scale).toBe('20 : 1');
    // The tip, cutter.form: 1.256 deep to the pitch line.
    expect(svg).toMatch(/M-\S+ -25\.12L\S+ -25\.12"/);
    expect(draw('cutter-projection', { scale: 10 }).svg).toMatch(/M-\S+ -12\.56L\S+ -12\.56"/);
  });

  it.each([
    ['crossing-template', { outsideDiameter: 40 }, /^outsideDiameter/],
    ['crossing-template', { rootDiameter: 40.8 }, /^rootDiameter: 40.8/],
    ['crossing-template', { hole: 14 }, /^hole: 14 .*less than the hub/],
    ['crossing-template', { armWidthAtHub: 9 }, /^armWidthAtHub/],
    ['wheel-check', { leaves: 61 }, /^leaves: 61/],
    ['wheel-check', { rootDiameter: 48 }, /^rootDiameter: 48/],
    ['plate-pattern', { diameters: [60] }, /^diameters/],
    ['plate-pattern', { plateDiameter: 130 }, /^plateDiameter: 130/],
    ['plate-pattern', { bore: 58 }, /^bore: 58/],
    ['degree-disc', { hole: 110 }, /^hole: 110 .*46 mm less than the disc/],
    ['cutter-projection', { tipRadius: 5 }, /^tipRadius: 5/],
    ['degree-disc', { diameter: 200 }, /^width of the page: "165 mm"/],
  ])('%s refuses %j', (name, given, message) => {
    expect(() => draw(name, given)).toThrow(InputError);
    expect(() => draw(name, given)).toThrow(message);
  });
});
