import type { FormulaRecord } from '../record.js';

/** Dividing: published formulas, by id. Lengths mm unless the title says otherwise. */
export const dividingFormulas = {} as const satisfies Record<string, FormulaRecord>;
