/** A drill that is known by a number or a letter. */
export interface GaugeDrill {
  readonly name: string;
  readonly inches: number;
}

export const drillSizesSource =
  'Number and letter drills: two charts (web pages, read 2026) for 65 of the 106 sizes, the others from memory';

/** Ten-thousandths of an inch, No. 80 first. */
const NUMBERS = [
  135, 145, 160, 180, 200, 210, 225, 240, 250, 260, 280, 292, 310, 320, 330, 350, 360, 370, 380, 390, 400,
  410, 420, 430, 465, 520, 550, 595, 635, 670, 700, 730, 760, 785, 810, 820, 860, 890, 935, 960, 980, 995,
  1015, 1040, 1065, 1100, 1110, 1130, 1160, 1200, 1285, 1360, 1405, 1440, 1470, 1495, 1520, 1540, 1570, 1590,
  1610, 1660, 1695, 1730, 1770, 1800, 1820, 1850, 1890, 1910, 1935, 1960, 1990, 2010, 2040, 2055, 2090, 2130,
  2210, 2280,
];
/** Thousandths of an inch, A first. */
const LETTERS = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348, 358, 368,
  377, 386, 397, 404, 413,
];

/** Every number and letter drill, smallest first. */
export const gaugeDrills: readonly GaugeDrill[] = [
  ...NUMBERS.map((size, at) => ({ name: String(NUMBERS.length - at), inches: size / 10_000 })),
  ...LETTERS.map((size, at) => ({ name: String.fromCharCode(65 + at), inches: size / 1000 })),
];
