import type { FormulaRecord } from '../record.js';

/** Workshop trigonometry: published formulas, by id. Lengths mm unless the title says otherwise. */
export const trigonometryFormulas = {} as const satisfies Record<string, FormulaRecord>;
