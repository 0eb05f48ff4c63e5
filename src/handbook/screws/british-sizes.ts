/** One thread of an inch series: its name, diameter in inches, threads per inch, and core diameter in inches as printed. */
export type InchRow = readonly [name: string, diameter: number, tpi: number, core?: number];

/**
 * British Standard Whitworth, BS 84. Cores of 1/8, 5/32, 3/16, 1/4, 5/16, 3/8, 1/2, 5/8 and 1 in as a fastener maker
 * prints them (1 in there 0.8400, converted from mm; 0.8399 in another table is followed); the others from memory.
 */
export const whitworthCoarse: readonly InchRow[] = [
  ['1/16', 0.0625, 60, 0.0412],
  ['3/32', 0.09375, 48, 0.0671],
  ['1/8', 0.125, 40, 0.093],
  ['5/32', 0.15625, 32, 0.1162],
  ['3/16', 0.1875, 24, 0.1341],
  ['7/32', 0.21875, 24, 0.1654],
  ['1/4', 0.25, 20, 0.186],
  ['5/16', 0.3125, 18, 0.2414],
  ['3/8', 0.375, 16, 0.295],
  ['7/16', 0.4375, 14, 0.346],
  ['1/2', 0.5, 12, 0.3933],
  ['9/16', 0.5625, 12, 0.4558],
  ['5/8', 0.625, 11, 0.5086],
  ['11/16', 0.6875, 11, 0.5711],
  ['3/4', 0.75, 10, 0.6219],
  ['7/8', 0.875, 9, 0.7327],
  ['1', 1, 8, 0.8399],
  ['1 1/8', 1.125, 7, 0.942],
  ['1 1/4', 1.25, 7, 1.067],
  ['1 1/2', 1.5, 6, 1.2866],
  ['1 3/4', 1.75, 5, 1.4939],
  ['2', 2, 4.5, 1.7154],
];

/** British Standard Fine, BS 84; threads as a gauge maker prints them for ten sizes, the others and the cores from memory. */
export const whitworthFine: readonly InchRow[] = [
  ['3/16', 0.1875, 32, 0.1475],
  ['7/32', 0.21875, 28, 0.173],
  ['1/4', 0.25, 26, 0.2007],
  ['9/32', 0.28125, 26, 0.232],
  ['5/16', 0.3125, 22, 0.2543],
  ['3/8', 0.375, 20, 0.311],
  ['7/16', 0.4375, 18, 0.3664],
  ['1/2', 0.5, 16, 0.42],
  ['9/16', 0.5625, 16, 0.4825],
  ['5/8', 0.625, 14, 0.5335],
  ['11/16', 0.6875, 14, 0.596],
  ['3/4', 0.75, 12, 0.6433],
  ['7/8', 0.875, 11, 0.7586],
  ['1', 1, 10, 0.8719],
  ['1 1/8', 1.125, 9, 0.9827],
  ['1 1/4', 1.25, 9, 1.1077],
  ['1 3/8', 1.375, 8, 1.2149],
  ['1 1/2', 1.5, 8, 1.3399],
];

/** British Standard Brass: 26 threads to the inch on every size; sizes from memory. */
export const brass: readonly InchRow[] = [
  ['1/8', 0.125, 26],
  ['3/16', 0.1875, 26],
  ['1/4', 0.25, 26],
  ['5/16', 0.3125, 26],
  ['3/8', 0.375, 26],
  ['7/16', 0.4375, 26],
  ['1/2', 0.5, 26],
  ['5/8', 0.625, 26],
  ['3/4', 0.75, 26],
  ['7/8', 0.875, 26],
  ['1', 1, 26],
];

/** Model engineers’ threads: Whitworth form, 40 or 32 to the inch on every size; sizes from memory. */
export const modelEngineer: readonly InchRow[] = [
  ['1/8', 0.125, 40],
  ['5/32', 0.15625, 40],
  ['3/16', 0.1875, 40],
  ['7/32', 0.21875, 40],
  ['1/4', 0.25, 40],
  ['9/32', 0.28125, 40],
  ['5/16', 0.3125, 40],
  ['3/8', 0.375, 40],
  ['7/16', 0.4375, 40],
  ['1/2', 0.5, 40],
  ['3/16', 0.1875, 32],
  ['7/32', 0.21875, 32],
  ['1/4', 0.25, 32],
  ['9/32', 0.28125, 32],
  ['5/16', 0.3125, 32],
  ['3/8', 0.375, 32],
  ['7/16', 0.4375, 32],
  ['1/2', 0.5, 32],
];

/**
 * British Association threads, BS 93: diameter and pitch in mm as trade tables print them, number 0 first; 5, 7, 11 to
 * 13, 15 and 16 from memory.
 */
export const association: readonly (readonly [diameter: number, pitch: number])[] = [
  [6, 1],
  [5.3, 0.9],
  [4.7, 0.81],
  [4.1, 0.73],
  [3.6, 0.66],
  [3.2, 0.59],
  [2.8, 0.53],
  [2.5, 0.48],
  [2.2, 0.43],
  [1.9, 0.39],
  [1.7, 0.35],
  [1.5, 0.31],
  [1.3, 0.28],
  [1.2, 0.25],
  [1, 0.23],
  [0.9, 0.21],
  [0.79, 0.19],
];
