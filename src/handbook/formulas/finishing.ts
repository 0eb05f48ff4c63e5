import type { FormulaRecord } from '../record.js';

/** Finishing: published formulas, by id. Lengths mm unless the title says otherwise. */
export const finishingFormulas = {} as const satisfies Record<string, FormulaRecord>;
