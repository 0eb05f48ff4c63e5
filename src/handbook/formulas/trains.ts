import type { FormulaRecord } from '../record.js';

/** Trains and time: published formulas, by id. Lengths mm unless the title says otherwise. */
export const trainsFormulas = {} as const satisfies Record<string, FormulaRecord>;
