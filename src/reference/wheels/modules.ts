import type { Kit } from '../../kit/schema.js';

/** Modules of clocks and small models, mm. */
const USUAL = [0.4, 0.5, 0.6, 0.7, 0.8, 1];

/** The modules that a table is made for: the usual ones, and those of the kit's own cutters of a kind. */
export function modulesFor(cuts: Kit['cutters'][number]['cuts'], { cutters }: Kit): number[] {
  const own = cutters.filter((one) => one.cuts === cuts).map(({ module }) => module);
  return [...new Set([...USUAL, ...own])].sort((a, b) => a - b);
}
