import { figures, type SheetKind } from '../sheet.js';

/** Bars: mm, or inches. */
const BARS = {
  mm: Array.from({ length: 26 }, (_, at) => String(at + 5)),
  inch: [
    ...['1/4', '5/16', '3/8', '7/16', '1/2', '9/16', '5/8', '11/16', '3/4', '13/16', '7/8', '15/16', '1'],
    ...['1 1/16', '1 1/8', '1 3/16', '1 1/4'],
  ],
};

export const flats: SheetKind = {
  name: 'flats',
  title: 'Squares and hexagons from round bar',
  line: 'across flats and depth of each flat, for bar of 5 to 30 mm or 1/4 to 1 1/4 in',
  make: (desk) => ({
    conventions: [
      'Bar: the diameter of the round bar. Its corners are left just sharp. Depth: how far the cutter goes in from the outside, for one flat.',
      'From the spanner size to the bar: look for it under “across flats”, and take the next bar above.',
    ],
    cautions: ['isolate-first', 'cutter-guard'],
    tables: [
      {
        columns: [
          figures('Bar', desk.lengths),
          figures('Hexagon, across flats', desk.lengths),
          figures('Depth of a flat', desk.lengths),
          figures('Square, across flats', desk.lengths),
          figures('Depth of a flat', desk.lengths),
        ],
        rows: BARS[desk.units].map((bar) => {
          const diameter = `${bar}${desk.lengths}`;
          const both = [6, 4].map((sides) => desk.work('polygon.flats', { diameter, sides }));
          return {
            cells: [bar, ...both.flatMap((one) => [one.length('acrossFlats'), one.length('depthOfFlat')])],
          };
        }),
      },
    ],
  }),
};
