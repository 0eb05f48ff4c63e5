import { describe, expect, it } from 'vitest';
import { type Check, workInFull } from '../../src/calculations/work.js';
import { figuresOf, nameOf, worked } from './sheets.js';

/** A figure that the handbook prints to few figures lies where those allow. */
function lies(text: string, { value, within }: Check, write: (value: unknown) => string): boolean {
  if (typeof value !== 'number' || within < 1e-6) return false;
  const [low, high] = [write(value - within), write(value + within)].map(Number);
  return Number(text) >= Number(low) && Number(text) <= Number(high);
}

describe.each(worked.map((one) => [nameOf(one), one] as const))('%s', (_, { sheet, sources }) => {
  it('prints in every cell what the handbook says', () => {
    const wrong = figuresOf(sheet).filter(({ figure }) => {
      const { calculation, given, find, write, text } = figure;
      const proofs = workInFull(calculation, given).checks.filter(({ of }) => of === find);
      const own = proofs.filter(({ measured }) => measured === undefined);
      // What is measured in place of a list or a shape has agreed already, or it would not have been worked.
      if (own.length === 0) return proofs.length === 0;
      return !own.every((proof) => write(proof.value) === text || lies(text, proof, write));
    });
    expect(wrong.map(({ place, figure }) => `${place}: ${figure.text}`)).toEqual([]);
  });

  it('has a cell for each column, in the same number of decimals all the way down', () => {
    for (const { columns, rows } of sheet.tables) {
      expect(rows.length).toBeGreaterThan(0);
      expect(rows.every(({ cells }) => cells.length === columns.length)).toBe(true);
      columns.forEach((column, at) => {
        if (column.kind !== 'figures') return;
        const texts = rows
          .map(({ cells }) => cells[at] ?? '')
          .map((cell) => (typeof cell === 'string' ? cell : cell.text));
        const decimals = texts
          .filter((text) => /^−?\d+(\.\d+)?$/.test(text))
          .map((text) => text.split('.')[1]?.length ?? 0);
        expect(new Set(decimals).size, column.head).toBeLessThanOrEqual(1);
      });
    }
  });

  it('says its conventions, its cautions and what it was held against', () => {
    expect(sheet.conventions.length).toBeGreaterThan(0);
    expect(sheet.cautions.length).toBeGreaterThan(0);
    expect(sources.length).toBeGreaterThan(0);
  });
});
