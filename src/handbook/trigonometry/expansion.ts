import { type Citation, practice } from '../record.js';

/** A metal's growth for each degree, and where it is printed. */
export interface Expansion {
  /** Millionths of its length for each degree Celsius. */
  readonly millionths: number;
  readonly source: Citation;
}

/** Linear expansion about room temperature. Where sources differ by the last figure, the one named is followed. */
export const expansions = {
  brass: { millionths: 20.4, source: { work: 'cz128-sheet', at: 'CZ128, 20.4 × 10⁻⁶/K' } },
  'engraving-brass': { millionths: 21.7, source: { work: 'cz137-sheet', at: 'CZ137, 0 to 300 °C' } },
  steel: { millionths: 11.3, source: { work: 'compensation', at: 'steel pendulum rod' } },
  invar: { millionths: 1.2, source: practice('invar, from memory') },
  'cast-iron': { millionths: 10.5, source: practice('grey cast iron, from memory') },
  aluminium: { millionths: 23, source: practice('aluminium, from memory') },
  copper: { millionths: 17, source: practice('copper, from memory') },
} as const satisfies Record<string, Expansion>;

/** Names of the metals in the table. */
export const metals = Object.keys(expansions) as (keyof typeof expansions)[];
