import type { Kit } from '../../kit/schema.js';
import type { Desk } from '../desk.js';
import { type Cell, figures, type Row, type SheetKind, type Table } from '../sheet.js';
import { countsTo } from './not-simple.js';

type Plate = Kit['directPlates'][number];

export const directDividing: SheetKind = {
  name: 'direct-dividing',
  title: 'Direct dividing',
  line: 'notches to move for every count that the plates on the spindle give',
  needs: {
    words: 'a notched or drilled plate for the spindle',
    in: ({ directPlates }) => directPlates.length > 0,
  },
  make: (desk, { directPlates }) => ({
    machine: directPlates
      .map(({ name, notches }) => `${capital(name)}: circles of ${notches.join(', ')}.`)
      .join(' '),
    conventions: [
      'The plate is on the spindle itself: one turn of it is one turn of the work.',
      'On 48: notches or holes to move for one division, on the circle of 48. Spaces are counted: the notch that the detent is in is nought. No figure: that circle does not give the count.',
      'A count that is not here goes into no circle a whole number of times. Use a head.',
      'Nothing divides the errors of the plate: a notch out of place puts its tooth out by as many minutes.',
      'Take up shake the same way every time, and let the detent drop right home.',
    ],
    cautions: ['direct-dividing', 'indexing'],
    tables: directPlates.map((plate) => tableOf(plate, directPlates.length > 1, desk)),
  }),
};

function tableOf({ name, notches }: Plate, titled: boolean, desk: Desk): Table {
  const circles = [...new Set(notches)].sort((a, b) => a - b);
  const counts = countsTo(Math.max(...circles)).filter(
    (divisions) => desk.work('dividing.direct', { divisions, notches: circles }).found.possible,
  );
  return {
    ...(titled ? { title: capital(name) } : {}),
    columns: [
      figures('Count'),
      figures('Exact angle'),
      ...circles.map((circle) => figures(`On\u00A0${circle}`)),
    ],
    rows: counts.map((count) => rowOf(count, circles, desk)),
  };
}

interface Setting {
  readonly plate: number;
  readonly step: number;
}

function rowOf(divisions: number, circles: readonly number[], desk: Desk): Row {
  const all = desk.work('dividing.direct', { divisions, notches: circles });
  const on = (circle: number): Cell =>
    all.figure('plates', (plates) => {
      const own = (plates as readonly Setting[]).find(({ plate }) => plate === circle);
      return own ? String(own.step) : '';
    });
  return {
    cells: [
      String(divisions),
      desk.work('holes.circle', { holes: divisions, diameter: 1 }).angle('stepAngle'),
      ...circles.map(on),
    ],
  };
}

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
