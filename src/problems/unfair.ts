/** Values that make no fair problem; others are drawn. No bug, so it looks for no place in the code. */
export class Unfair {
  constructor(readonly message: string) {}
}

/** An answer that the neighbour may have. */
export class WrongSide extends Unfair {}

/** Which half of the answers a variant draws from: neighbours sit on different sides, and so share none. */
export type Side = 0 | 1;
