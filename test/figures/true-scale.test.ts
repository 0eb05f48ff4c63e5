import { describe, expect, it } from 'vitest';
import { drawFigure } from '../../src/figures/index.js';
import { classWheel, handout } from './class-wheel.js';

const draw = (name: string, given: Record<string, unknown> = {}) =>
  drawFigure(name, { ...classWheel[name], ...given }, handout);

const radii = (svg: string): number[] => [...svg.matchAll(/ r="([\d.]+)"/g)].map((match) => Number(match[1]));

/** Every place a path goes to or through, as it is written. */
const places = (svg: string): [number, number][] =>
  [...svg.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((match) => [Number(match[1]), Number(match[2])]);

describe('a figure at true scale', () => {
  it('wheel-blank draws blank, pitch and root circles and bore with their own radii', () => {
    const figure = draw('wheel-blank');
    expect(figure.scale).toBe('true scale');
    expect(radii(figure.svg)).toEqual([25.104, 24, 22.744, 3]);
  });

  it('wheel-blank is drawn at half size when the page is too narrow, and says so', () => {
    const figure = drawFigure('wheel-blank', classWheel['wheel-blank'] ?? {}, { ...handout, maxWidth: 70 });
    expect(figure.scale).toBe('1 : 2');
    expect(radii(figure.svg)).toEqual([12.552, 12, 11.372, 1.5]);
  });

  it('check-bar is 100 mm across and 100 mm down', () => {
    const { svg, scale } = draw('check-bar');
    expect(scale).toBe('true scale');
    expect(svg).toContain('d="M0 0L100 0"');
    expect(svg).toContain('d="M0 0L0 100"');
  });

  it('check-bar in inches is four inches, ticked in halves', () => {
    const { svg } = drawFigure('check-bar', {}, { ...handout, units: 'inch' });
    expect(svg).toContain('d="M0 0L101.6 0"');
    expect(places(svg)).toContainEqual([12.7, 0]);
  });

  it('pitch-circles touch: the centres stand as far apart as the radii add up to', () => {
    const { svg } = draw('pitch-circles');
    const circles = [...svg.matchAll(/<circle cx="(\S+)" cy="(\S+)" r="(\S+)"/g)].map((m) =>
      m.slice(1).map(Number),
    );
    expect(circles.slice(0, 2)).toEqual([
      [0, 0, 24],
      [27.2, 0, 3.2],
    ]);
  });

  it('over-travel sets the cutter √(h(D − h)) and the clearance off both faces', () => {
    const { svg } = draw('over-travel');
    const centres = [...svg.matchAll(/<circle cx="(\S+)" cy="(\S+)" r="12"/g)].map((m) => Number(m[1]));
    const approach = Math.sqrt(2.36 * (24 - 2.36));
    expect(centres[0]).toBeCloseTo(-approach - 1, 4);
    expect(centres[1]).toBeCloseTo(9.5 + approach + 1, 4);
    expect(centres[2]).toBe(4.75);
    // Where the cutter first touches, its edge passes through the upper corner of the near face.
    expect(Math.hypot(approach, 12 - 2.36)).toBeCloseTo(12, 9);
  });

  it('stack draws the travel that is needed and the travel there is', () => {
    const { svg } = draw('stack');
    const starts = -7.146 - 1;
    expect(svg).toMatch(new RegExp(`M${starts} ([\\d.]+)L${9.5 + 7.146 + 1} \\1"`));
    expect(svg).toMatch(new RegExp(`M${starts} ([\\d.]+)L${starts + 60} \\1"`));
  });
});

describe('an enlarged figure', () => {
  it('tooth-form passes its faces through the pitch points and the tip, 20 times as large', () => {
    const { svg, scale } = draw('tooth-form');
    expect(scale).toBe('20 : 1');
    const outline = svg.split('\n')[1] ?? '';
    const angle = Math.PI / 120;
    const [x, y] = [480 * Math.sin(angle), 480 * Math.cos(angle)].map((value) => +value.toFixed(4));
    expect(outline).toContain(
      `L${-(x ?? 0)} ${-(y ?? 0)}A30.88 30.88 0 0 1 0 -502.08A30.88 30.88 0 0 1 ${x} ${-(y ?? 0)}L`,
    );
  });

  it('tooth-form has flanks that point to the centre of the wheel', () => {
    const outline = draw('tooth-form').svg.split('\n')[1] ?? '';
    const flank =
      /0 -502\.08A30\.88 30\.88 0 0 1 (\S+) (\S+)L(\S+) (-[\d.]+)/.exec(outline)?.slice(1).map(Number) ?? [];
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = flank;
    expect(Math.atan2(x1, -y1)).toBeCloseTo(Math.atan2(x2, -y2), 6);
    expect(Math.hypot(x2, y2)).toBeCloseTo(20 * (24 - 1.256), 3);
  });

  it('pinion-section is one closed outline with two face arcs a leaf and a root arc between', () => {
    const { svg, scale } = draw('pinion-section');
    expect(scale).toBe('10 : 1');
    const outline = svg.split('\n').find((line) => line.endsWith('Z" stroke-width="0.5"/>')) ?? '';
    expect(outline.match(/A8\.4 8\.4 0 0 1/g)).toHaveLength(16);
    expect(outline.match(/A16\.8 16\.8 0 0 1/g)).toHaveLength(8);
  });

  it('cutting-passes puts each level at the running total', () => {
    const { svg, scale } = draw('cutting-passes');
    expect(scale).toBe('depth 20 : 1');
    for (const level of [18, 36]) expect(svg).toMatch(new RegExp(`M-8 ${level}L8 ${level}"`));
    for (const total of ['0.00', '0.90', '1.80', '2.36']) expect(svg).toContain(`>${total}\u2009mm<`);
  });

  it('hump leaves the root R − √(R² − s²) high at the far face', () => {
    const { svg, scale } = draw('hump');
    expect(scale).toBe('20 : 1');
    const high = 20 * (12 - Math.sqrt(144 - 9));
    expect(svg).toContain(`A240 240 0 0 0 0 ${-high.toFixed(4)}L0 `);
  });

  it('depth-forms draws each form as deep as its factor says', () => {
    const { svg, scale } = draw('depth-forms');
    expect(scale).toBe('10 : 1');
    for (const factor of ['2.95', '3.38', '2.45', '3.00']) {
      expect(svg).toContain(`h = ${factor} × module`);
      expect(svg).toContain(`>= ${(0.8 * Number(factor)).toFixed(2)}\u2009mm<`);
    }
  });

  it('index-plate numbers every hole and fills the pin', () => {
    const { svg } = draw('index-plate');
    for (let hole = 0; hole < 21; hole++) expect(svg).toContain(`>${hole}</text>`);
    expect(svg).toContain('15 spaces = 16 holes inside the arms');
  });
});
