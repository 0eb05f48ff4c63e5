/** What a problem prints of a working or a table. What is left out is for the learner to write. */
export type Shown =
  | {
      readonly kind: 'working';
      /** Whether the lines have numbers before them. */
      readonly numbered: boolean;
      readonly lines: readonly ShownLine[];
    }
  | {
      readonly kind: 'table';
      /** Over its two columns. */
      readonly heads: readonly [string, string];
      readonly rows: readonly ShownRow[];
    };

/** A sentence, or as much of a formula with its numbers as is printed; what is missing is a blank. */
export type ShownLine =
  | { readonly say: string; readonly blank: boolean }
  | {
      /** `d_a`; empty where the formula has no left-hand side. */
      readonly left: string;
      /** `d_a = m*(z + 2.76)` */
      readonly formula?: string;
      readonly numbers?: Readonly<Record<string, string>>;
      readonly result?: string;
    };

export interface ShownRow {
  readonly head: string;
  readonly value?: string;
}
