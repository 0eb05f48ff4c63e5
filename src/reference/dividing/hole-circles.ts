import { formatNumber } from '../../units/format.js';
import type { Desk, Worked } from '../desk.js';
import { figures, type SheetKind, type Table } from '../sheet.js';
import { countsTo } from './not-simple.js';

interface Hole {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}

/** Coordinates of so many holes are on the first sheet, and of more on another. */
const FEW = 12;
const MOST = 24;
const LEAST = 3;
const PLACES = 5;

const TIMES =
  'For a pitch circle of diameter 1: multiply by your diameter, in any unit. Diameter, not radius.';
const AXES =
  'The first hole lies on the x axis; the others follow against the clock. x and y are from the centre.';
const EDGES = 'from the edges of the square that just holds the pitch circle, and never less than nought';

export const holeCircles: SheetKind = {
  name: 'hole-circles',
  title: 'Circles of holes',
  line: `chords of ${LEAST} to ${MOST} holes, and coordinates to ${FEW}, on a circle of one unit, to be multiplied`,
  make: (desk) => ({
    conventions: [
      TIMES,
      'Chord: from a hole to the next, straight across, as dividers are set.',
      `${AXES} “Left” and “below” are ${EDGES}.`,
    ],
    cautions: ['drilling-plates'],
    tables: [chords(desk), ...countsTo(FEW, LEAST).map((holes) => places(holes, desk))],
  }),
};

export const manyHoles: SheetKind = {
  name: 'many-holes',
  title: `Circles of ${FEW + 1} to ${MOST} holes`,
  line: `coordinates of ${FEW + 1} to ${MOST} holes on a circle of one unit, to be multiplied`,
  make: (desk) => ({
    conventions: [TIMES, `${AXES} Add 0.5 to both, and they are ${EDGES}.`],
    cautions: ['drilling-plates'],
    tables: countsTo(MOST, FEW + 1).map((holes) => places(holes, desk, ['centre'])),
  }),
};

function chords(desk: Desk): Table {
  return {
    title: 'Chords',
    columns: [figures('Holes'), figures('Angle', '°'), figures('Chord')],
    rows: countsTo(MOST, LEAST).map((holes) => {
      const circle = desk.work('holes.circle', { holes, diameter: 1 });
      return { cells: [String(holes), circle.number('stepAngle', 4), circle.number('chord', PLACES)] };
    }),
  };
}

type Datum = 'centre' | 'edge';
const HEADS = { centre: ['x', 'y'], edge: ['Left', 'Below'] } as const;

function places(holes: number, desk: Desk, data: readonly Datum[] = ['centre', 'edge']): Table {
  const circles = data.map((datum) => desk.work('holes.circle', { holes, diameter: 1, datum }));
  const told = (circle: Worked, at: number, key: keyof Hole, places: number) =>
    circle.figure('holes', (all) => formatNumber((all as readonly Hole[])[at]?.[key] ?? Number.NaN, places));
  return {
    title: `${holes} holes`,
    columns: [
      figures('Hole'),
      figures('Angle', '°'),
      ...data.flatMap((datum) => HEADS[datum].map((head) => figures(head))),
    ],
    rows: Array.from({ length: holes }, (_, at) => ({
      cells: [
        String(at + 1),
        ...circles.slice(0, 1).map((circle) => told(circle, at, 'angle', 3)),
        ...circles.flatMap((circle) => (['x', 'y'] as const).map((key) => told(circle, at, key, PLACES))),
      ],
    })),
  };
}
