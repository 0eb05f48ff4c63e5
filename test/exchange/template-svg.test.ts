import { describe, expect, it } from 'vitest';
import { templateSvg } from '../../src/exchange/template-svg.js';
import { Desk } from '../../src/reference/desk.js';
import { templates } from '../../src/reference/templates/index.js';
import { kits } from '../lesson/lessons.js';
import { classWheel, large } from '../reference/template-jobs.js';

const outlines = templates.flatMap((kind) =>
  kind
    .make(new Desk('mm'), kits[0], [classWheel, large])
    .pieces.flatMap(({ outline }) => (outline ? [{ kind: kind.name, outline }] : [])),
);

const svgOf = (kind: string, at = 0): string =>
  templateSvg(outlines.filter((one) => one.kind === kind)[at]?.outline ?? { name: '', cut: [], mark: [] });

/** Every place that a path comes to, in its own mm; arcs by their ends. */
function places(d: string): { x: number; y: number }[] {
  const found: { x: number; y: number }[] = [];
  let [x, y] = [0, 0];
  const numbers = (text: string): number[] => (text.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
  for (const [, letter = '', rest = ''] of d.matchAll(/([MlaZ])([^MlaZ]*)/g)) {
    const all = numbers(rest);
    if (letter === 'M') {
      [x = 0, y = 0] = all;
      found.push({ x, y });
      for (let at = 2; at < all.length; at += 2)
        found.push({ x: (x += all[at] ?? 0), y: (y += all[at + 1] ?? 0) });
    }
    if (letter === 'l')
      for (let at = 0; at < all.length; at += 2)
        found.push({ x: (x += all[at] ?? 0), y: (y += all[at + 1] ?? 0) });
    if (letter === 'a')
      for (let at = 0; at < all.length; at += 7)
        found.push({ x: (x += all[at + 5] ?? 0), y: (y += all[at + 6] ?? 0) });
  }
  return found;
}

const pathsIn = (svg: string, group: 'cut' | 'mark'): string[] =>
  [...(new RegExp(`<g id="${group}">([^]*?)</g>`).exec(svg)?.[1] ?? '').matchAll(/ d="([^"]+)"/g)].map(
    ([, d = '']) => d,
  );

const reach = (d: string): number => Math.max(...places(d).map(({ x, y }) => Math.hypot(x, y)));

describe.each(outlines.map(({ kind, outline }) => [`${kind}: ${outline.name}`, outline] as const))(
  '%s',
  (_, outline) => {
    const svg = templateSvg(outline);

    it('is millimetres, paths in their groups, and a title: no lettering, nothing filled', () => {
      const [, width, height, view] =
        /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg) ?? [];
      expect(view?.split(' ').slice(2)).toEqual([width, height]);
      expect(new Set([...svg.matchAll(/<(\w+)/g)].map(([, tag]) => tag))).toEqual(
        new Set(['svg', 'title', 'g', 'path'].filter((tag) => svg.includes(`<${tag}`))),
      );
      expect(svg).toContain(' fill="none"');
      expect(svg).not.toMatch(/NaN|Infinity|undefined|<text|<use|transform|style=/);
      expect(/<title>(.*)<\/title>/.exec(svg)?.[1]).toBe(outline.name);
    });

    it('holds all its lines within its own edges', () => {
      const [left = 0, top = 0, width = 0, height = 0] =
        /viewBox="([^"]+)"/.exec(svg)?.[1]?.split(' ').map(Number) ?? [];
      const all = [...pathsIn(svg, 'cut'), ...pathsIn(svg, 'mark')];
      expect(all).toHaveLength(outline.cut.length + outline.mark.length);
      for (const { x, y } of all.flatMap(places)) {
        expect(x).toBeGreaterThanOrEqual(left);
        expect(x).toBeLessThanOrEqual(left + width);
        expect(y).toBeGreaterThanOrEqual(top);
        expect(y).toBeLessThanOrEqual(top + height);
      }
    });
  },
);

describe('what is cut', () => {
  it('a crossing: the hole, five closed windows, then the tips, each of its size', () => {
    const paths = pathsIn(svgOf('crossing'), 'cut');
    expect(paths).toHaveLength(7);
    expect(paths.every((d) => d.endsWith('Z'))).toBe(true);
    expect(paths.map((d) => reach(d).toFixed(2))).toEqual(['3.00', ...Array(5).fill('20.40'), '25.10']);
    // Every corner of a window keeps clear of the hub and of its arm.
    const nearest = Math.min(
      ...paths.slice(1, 6).flatMap((d) => places(d).map(({ x, y }) => Math.hypot(x, y))),
    );
    expect(nearest).toBeCloseTo(7, 2);
  });

  it('a wheel: its teeth from root to tip, one closed line', () => {
    const [, teeth = ''] = pathsIn(svgOf('wheel-check'), 'cut');
    const radii = places(teeth).map(({ x, y }) => Math.hypot(x, y));
    expect(Math.max(...radii)).toBeCloseTo(25.104, 2);
    expect(Math.min(...radii)).toBeCloseTo(22.744, 2);
    expect(teeth.endsWith('Z')).toBe(true);
  });

  it('a plate: every hole where the count says, from the top', () => {
    const svg = svgOf('division-plate', 2);
    const paths = pathsIn(svg, 'cut');
    expect(paths).toHaveLength(2 + 37 + 39 + 41 + 43 + 47 + 49);
    const middles = paths.slice(1, -1).map((d) => {
      const [right = { x: 0, y: 0 }, left = right] = places(d);
      return { x: (right.x + left.x) / 2, y: (right.y + left.y) / 2 };
    });
    const outermost = Math.max(...middles.map(({ x, y }) => Math.hypot(x, y)));
    const ring = middles.filter(({ x, y }) => Math.abs(Math.hypot(x, y) - outermost) < 0.01);
    expect(ring).toHaveLength(49);
    expect(ring.some(({ x, y }) => Math.abs(x) < 0.002 && Math.abs(y + outermost) < 0.002)).toBe(true);
    const angles = ring.map(({ x, y }) => Math.atan2(y, x)).sort((a, b) => a - b);
    const steps = angles.slice(1).map((angle, at) => angle - (angles[at] ?? 0));
    for (const step of steps) expect(step).toBeCloseTo((2 * Math.PI) / 49, 4);
  });

  it('a disc: 360 lines to mark, and two circles to cut', () => {
    const svg = svgOf('degree-disc');
    expect([pathsIn(svg, 'mark').length, pathsIn(svg, 'cut').length]).toEqual([360, 2]);
    expect(pathsIn(svg, 'cut').map((d) => reach(d))).toEqual([5, 75]);
  });
});
