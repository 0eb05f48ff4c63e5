import type { SourceKey } from './sources.js';

/** Where a formula or value is printed. */
export interface Citation {
  readonly work: SourceKey;
  /** Page, table or clause; or `from memory` when nobody has opened it, `derived` for elementary geometry. */
  readonly at: string;
}

/** Elementary geometry or arithmetic, which anyone can derive again. */
export const derived = (at: string): Citation => ({ work: 'derived', at });

/** A rule of the trade that nobody has found in print. */
export const practice = (at: string): Citation => ({ work: 'practice', at });

/** A worked value that runs as a test. */
export interface WorkedValue {
  readonly given: Readonly<Record<string, number>>;
  readonly result: number;
  /** How far the formula may be from the printed figure: half its last digit, or as the note says. */
  readonly tolerance: number;
  readonly source: Citation;
}

/** One published formula with its source and worked values. */
export interface FormulaRecord {
  readonly title: string;
  readonly formula: string;
  readonly source: Citation;
  readonly worked: readonly WorkedValue[];
}
