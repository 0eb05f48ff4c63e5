import type { FormulaRecord } from '../record.js';

/** Screws: published formulas, by id. Lengths mm unless the title says otherwise. */
export const screwsFormulas = {} as const satisfies Record<string, FormulaRecord>;
