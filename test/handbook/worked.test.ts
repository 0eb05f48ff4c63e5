import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '../../src/formula/formula.js';
import { formulas } from '../../src/handbook/formulas.js';
import { diametralSeries } from '../../src/handbook/involute/cutter-numbers.js';
import type { FormulaRecord } from '../../src/handbook/record.js';
import { pinionTable, printedTenLeafDepth, wheelTable } from '../../src/handbook/wheels/tooth-tables.js';

describe('worked values of the handbook', () => {
  for (const [id, record] of Object.entries<FormulaRecord>(formulas))
    for (const { given, result, tolerance, source } of record.worked)
      it(`${id} ${JSON.stringify(given)} = ${result} (${source.work}, ${source.at})`, () =>
        expect(Math.abs(evaluateFormula(record.formula, given) - result)).toBeLessThanOrEqual(
          tolerance + 1e-12,
        ));
});

// Cutter maker's dimension table, "to BS 978 Part 2, NHS 56702 and 56703": blank less root is twice the depth.
it('the wheel columns of the dimension table agree among themselves', () => {
  for (const { blank, root, depth } of Object.values(wheelTable))
    expect((blank - root) / 2).toBeCloseTo(depth, 10);
});

it('the pinion columns agree too, but for the printed depth of ten leaves', () => {
  for (const { blank, root, depth } of Object.values(pinionTable))
    expect((blank - root) / 2).toBeCloseTo(depth, 10);
  const ten = pinionTable[10];
  // The page prints 2.755; blank and root are followed, since the cutter's own dedendum 2.05 makes 2.855 as well.
  expect((ten.blank - ten.root) / 2 - printedTenLeafDepth).toBeCloseTo(0.1, 10);
  expect(0.805 + 2.05).toBeCloseTo(ten.depth, 10);
});

it('the eight involute cutters leave no count out and serve none twice', () => {
  for (let teeth = 12; teeth <= 200; teeth++)
    expect(
      diametralSeries.filter((row) => teeth >= row.from && (row.to === null || teeth <= row.to)),
    ).toHaveLength(1);
});
