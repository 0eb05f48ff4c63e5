import { describe, expect, it } from 'vitest';
import { checkGiven } from '../../src/figures/check-given.js';
import type { FigureStyle } from '../../src/figures/figure.js';
import { figures } from '../../src/figures/index.js';
import { collisions } from './collisions.js';
import { sweeps } from './sweep.js';

const STYLES: readonly FigureStyle[] = [
  { labelSize: 2.8, units: 'mm', maxWidth: 165 },
  { labelSize: 3, units: 'inch', maxWidth: 120 },
  { labelSize: 4.5, units: 'mm', maxWidth: 150 },
  { labelSize: 6.35, units: 'mm', maxWidth: 175 },
  { labelSize: 6.35, units: 'inch', maxWidth: 170 },
];

describe.each([...figures.values()])('figure $name', (figure) => {
  const given = sweeps[figure.name] ?? [];

  it('is swept', () => expect(given.length).toBeGreaterThan(3));

  it.each(STYLES)('has no label on a line or on a label, and fits, at $labelSize mm in $units', (style) => {
    const wrong: string[] = [];
    for (const values of given) {
      const { marks, width } = figure.draw(checkGiven(figure.given, values), style);
      const faults = collisions(marks);
      if (width > style.maxWidth + 1e-9) faults.push(`${width} mm wide`);
      if (faults.length > 0) wrong.push(`${JSON.stringify(values)}: ${faults[0]} (${faults.length})`);
    }
    expect(wrong.slice(0, 5)).toEqual([]);
  });
});
