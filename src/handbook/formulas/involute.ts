import type { FormulaRecord } from '../record.js';

/** Involute wheels: published formulas, by id. Lengths mm unless the title says otherwise. */
export const involuteFormulas = {} as const satisfies Record<string, FormulaRecord>;
