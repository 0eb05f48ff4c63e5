import { describe, expect, it } from 'vitest';
import { drawFigure, figures } from '../../src/figures/index.js';
import { classWheel, handout } from './class-wheel.js';

describe.each([...figures.keys()])('drawFigure(%j)', (name) => {
  const figure = drawFigure(name, classWheel[name] ?? {}, handout);

  it('matches its drawing', async () => {
    await expect(`${figure.svg}\n`).toMatchFileSnapshot(`golden/${name}.svg`);
  });

  it('is the same every time', () => {
    expect(drawFigure(name, classWheel[name] ?? {}, handout)).toEqual(figure);
  });

  it('is sized in millimetres, its view box too', () => {
    const size = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(figure.svg);
    const [width, height, , , viewWidth, viewHeight] = size?.slice(1).map(Number) ?? [];
    expect([width, height]).toEqual([viewWidth, viewHeight]);
    expect(width).toBeCloseTo(figure.width, 3);
    expect(height).toBeCloseTo(figure.height, 3);
  });

  it('speaks a sentence, is black and white, and has no id but of a part that it repeats', () => {
    expect(figure.svg).toContain(`role="img" aria-label="${figure.label}"`);
    expect(figure.label).toMatch(/^[A-Z\d].{30,}\.$/);
    expect(figure.svg.replace(/ id="round-[\w-]+"/g, '')).not.toMatch(/\bid=|url\(|class=/);
    const ids = [...figure.svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => `#${id}`);
    const used = [...figure.svg.matchAll(/<use href="([^"]+)"/g)].map(([, href]) => href);
    expect(new Set(used)).toEqual(new Set(ids));
    expect(new Set(figure.svg.match(/#[\da-f]+/g))).toEqual(
      new Set(figure.svg.includes('#fff') ? ['#000', '#fff'] : ['#000']),
    );
  });

  it('has no line under 0.25 mm, and thins only dimension lines', () => {
    const widths = [...figure.svg.matchAll(/stroke-width="([\d.]+)"/g)].map((match) => Number(match[1]));
    expect(Math.min(...widths)).toBeGreaterThanOrEqual(0.25);
    expect([...new Set(widths)].sort()).toEqual(
      [...new Set(widths)].filter((w) => [0.25, 0.35, 0.5].includes(w)).sort(),
    );
  });

  it('is well formed, with no number that is not one', () => {
    expect(figure.svg).not.toMatch(/NaN|Infinity|undefined|e-\d|-0[ "]/);
    const lines = figure.svg.split('\n');
    expect(lines.at(-1)).toBe('</svg>');
    for (const line of lines.slice(1, -1)) {
      expect(line).toMatch(
        /^<(path|circle|use) [^<>]*\/>$|^<g id="round-\w+">(<(path|use) [^<>]*\/>)+<\/g>$|^<text [^<>]*>([^<>]|<tspan [^<>]*>[^<>]*<\/tspan>)*<\/text>$/,
      );
    }
  });
});
