/** A line of working as data: a sentence, or a formula with its numbers and its result. */
export type WorkingStep = Sentence | FormulaStep;

export interface Sentence {
  readonly say: string;
}

/** A formula, the numbers that go in, and what comes out, as the reader is shown them. */
export interface FormulaStep {
  /** `d_a = m*(z + 2.76)` */
  readonly formula: string;
  /** The number shown for each symbol of the right-hand side, without units: `{ m: '0.8', z: '60' }`. */
  readonly numbers: Readonly<Record<string, string>>;
  /** The result with its unit: `50.208 mm`. */
  readonly result: string;
}
