import type { FormulaId } from '../handbook/formulas.js';
import type { Citation } from '../handbook/record.js';
import type { WrongCut } from './cutting/given.js';
import type { Quantities, ValuesOf } from './quantity.js';

/** One value a calculation finds. */
export interface FoundQuantity {
  readonly symbol?: string;
  readonly unit: string;
  readonly name: string;
}

/** The handbook's word on one found value: a formula by name, or a value from a table or a count. */
export type Proof<G, F> = { [K in keyof F & string]: ProofOf<G, F, K> }[keyof F & string];

type ProofOf<G, F, K extends keyof F & string> =
  | { readonly of: K; readonly formula: FormulaId }
  | {
      readonly of: K;
      readonly source: Citation | ((given: G) => Citation);
      /** What the handbook says, from what is given alone. */
      readonly value: (given: G) => unknown;
      /** Largest difference allowed, in the value’s own unit; none for exact things. */
      readonly within?: number | ((given: G) => number);
      /** What is compared in place of the found value itself, where that is a shape or a long list. */
      readonly measure?: Measure<G, F[K]>;
    };

/** Something measured on a found shape or list, such as the area it encloses. */
export interface Measure<G, V> {
  /** In words, with its unit: `area enclosed, mm²`. */
  readonly name: string;
  readonly of: (found: V, given: G) => unknown;
}

/** A line of the working: a formula `a = …`, typeset with its numbers, or a sentence. */
export type Step = string | { readonly say: string };

/** A wrong way people really go: what it gives, and a sentence in shop terms. */
export interface Slip {
  readonly of: string;
  readonly formula: string;
  readonly says: string;
  /** For a move of spaces: the teeth that the wheel would have. */
  readonly makes?: string;
}

/** One thing the trade works out, by two routes. */
export interface Calculation<G extends Quantities = Quantities, F = Record<string, unknown>> {
  readonly name: string;
  readonly title: string;
  readonly given: G;
  readonly found: Readonly<Record<keyof F & string, FoundQuantity>>;
  /** Refuses combinations that no single value shows to be wrong. */
  readonly refuse?: (given: ValuesOf<G>) => void;
  /** Route A, the geometry. */
  readonly work: (given: ValuesOf<G>) => F;
  /** Route B, the handbook. */
  readonly proofs: readonly Proof<ValuesOf<G>, F>[];
  readonly working: readonly Step[] | ((given: ValuesOf<G>, found: F) => readonly Step[]);
  readonly slips?:
    | Readonly<Record<string, Slip>>
    | ((given: ValuesOf<G>, found: F) => Readonly<Record<string, Slip>>);
  /** By found value: the wheel that is cut with another one in its place; none where that makes no wheel to show. */
  readonly cutWrong?: {
    readonly [K in keyof F & string]?: (given: ValuesOf<G>, found: F, wrong: number) => WrongCut | undefined;
  };
}

/** Declares a calculation; only ties the types together. */
export function calculation<G extends Quantities, F>(definition: Calculation<G, F>): Calculation {
  return definition as unknown as Calculation;
}
