import { drillSizesSource, gaugeDrills } from '../../handbook/screws/drill-sizes.js';
import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Desk } from '../desk.js';
import { type Cell, figures, type SheetKind, words } from '../sheet.js';

const PARTS = 64;

export const fractions: SheetKind = {
  name: 'fractions',
  title: 'Fractions of an inch, and drills',
  line: 'every sixty-fourth to an inch, and number and letter drills, in inches and millimetres',
  make: (desk) => {
    desk.read(drillSizesSource);
    return {
      conventions: [
        'One inch is 25.4 mm exactly. Inches are exact as they stand; millimetres are rounded at the third place.',
      ],
      cautions: ['isolate-first'],
      tables: [
        {
          title: 'Fractions',
          columns: [words('Fraction'), figures('Inches', 'in'), figures('Millimetres', 'mm')],
          rows: Array.from({ length: PARTS }, (_, at) => ({
            strong: (at + 1) % 8 === 0,
            cells: [inLowestTerms(at + 1), ...bothUnits(`${at + 1}/${PARTS}in`, 6, desk)],
          })),
        },
        {
          title: 'Number and letter drills',
          columns: [words('Drill'), figures('Inches', 'in'), figures('Millimetres', 'mm')],
          rows: gaugeDrills.map(({ name, inches }) => ({
            cells: [name, ...bothUnits(`${inches}in`, 4, desk)],
          })),
        },
      ],
    };
  },
};

function bothUnits(length: string, places: number, desk: Desk): Cell[] {
  const size = desk.work('size.convert', { length });
  return [
    size.number('inches', places),
    size.figure('inches', (inches) => formatNumber(MM_PER_INCH * Number(inches), 3)),
  ];
}

function inLowestTerms(count: number): string {
  let [top, bottom] = [count, PARTS];
  while (top % 2 === 0 && bottom > 1) [top, bottom] = [top / 2, bottom / 2];
  return bottom === 1 ? String(top) : `${top}/${bottom}`;
}
