import { addendumByFixedPoint } from './addendum.js';

/**
 * Columns of the cutter maker's dimension table that are measured across the blank, in modules: what to add to
 * (or take from) the count of teeth. The columns for one tooth stand in calculations/tooth-forms.ts, so the two
 * check each other: addendum and dedendum against blank, root and full depth.
 */
export const wheelTable = {
  '2.95': { blank: 2.76, root: -3.14, depth: 2.95, thickness: 1.57, radius: 1.93 },
  // Printed full depth 3.38 = 1.38 + 2.00.
  '3.38': { blank: 2.76, root: -4, depth: 3.38, thickness: 1.57, radius: 1.93 },
  '2.45': { blank: 2.76, root: -2.14, depth: 2.45, thickness: 1.57, radius: 1.93 },
  '3.00': { blank: 2.5, root: -3.5, depth: 3, thickness: 1.41, radius: 2 },
} as const;

/**
 * The columns for one wheel. With a pinion's leaf count, the blank, depth and face radius follow from the
 * addendum rule instead: 0.95 and 1.40 of the theoretical addendum (BS 978-2 as commonly reported, from memory).
 */
export function wheelColumns(form: keyof typeof wheelTable, teeth: number, leaves?: number) {
  const printed = wheelTable[form];
  if (leaves === undefined) return printed;
  const theoretical = addendumByFixedPoint(teeth, leaves);
  const blank = 1.9 * theoretical;
  return { ...printed, blank, depth: (blank - printed.root) / 2, radius: 1.4 * theoretical };
}

/** The same for pinions: diameters in modules by leaf count, full depth as printed,
 * and the leaf's share of the circular pitch. */
export const pinionTable = {
  6: { blank: 7.71, root: 2.84, depth: 2.435, share: 1 / 3 },
  7: { blank: 8.71, root: 3.3, depth: 2.705, share: 1 / 3 },
  8: { blank: 9.71, root: 4.2, depth: 2.755, share: 1 / 3 },
  // The page prints 2.755 for ten leaves; its own blank and root make (11.61 - 5.90)/2 = 2.855, which is followed.
  10: { blank: 11.61, root: 5.9, depth: 2.855, share: 2 / 5 },
  12: { blank: 13.61, root: 7.8, depth: 2.905, share: 2 / 5 },
  16: { blank: 17.61, root: 11.8, depth: 2.905, share: 2 / 5 },
} as const;

/** The ten-leaf depth as printed, kept because it disagrees. */
export const printedTenLeafDepth = 2.755;
