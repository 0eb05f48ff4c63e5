import { type Move, movesInWords } from '../calculations/moves.js';

/** What `dividing.simple` finds. */
export interface Found {
  readonly possible: boolean;
  readonly turns: number;
  readonly settings: readonly Move[];
  readonly reason?: string;
}

/** The crank's movement for one division: every circle that serves, or why none does. */
export function crankInWords({ possible, turns, settings, reason }: Found): string {
  return possible ? movesInWords(turns, settings) : `not possible: ${reason ?? 'no circle serves'}`;
}
