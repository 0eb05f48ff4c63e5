import type { Kit } from '../../kit/schema.js';
import { formatNumber } from '../../units/format.js';
import type { Desk } from '../desk.js';
import { figures, type SheetKind, type Table } from '../sheet.js';
import { named } from './heads.js';
import { countsTo } from './not-simple.js';

type RotaryTable = Kit['rotaryTables'][number];

const MOST = 100;
const MINUTES_IN_CIRCLE = 21_600;

/** Minutes of arc in a turn of the handle, where they are whole: the lines of a dial that reads minutes. */
const linesOf = ({ ratio }: RotaryTable): number | undefined =>
  MINUTES_IN_CIRCLE % ratio === 0 && MINUTES_IN_CIRCLE / ratio <= 1000
    ? MINUTES_IN_CIRCLE / ratio
    : undefined;

const withDials = ({ rotaryTables }: Pick<Kit, 'rotaryTables'>): RotaryTable[] =>
  rotaryTables.filter((table) => table.ratio > 1 && linesOf(table) !== undefined);

export const rotaryTables: SheetKind = {
  name: 'rotary-tables',
  title: 'Dividing on the rotary table',
  line: `angle, turns and dial reading for 2 to ${MOST} divisions on the handle’s own dial`,
  needs: {
    words: 'a rotary table whose turn of the handle is a whole number of minutes',
    in: (kit) => withDials(kit).length > 0,
  },
  make: (desk, kit) => {
    const tables = withDials(kit);
    return {
      machine: tables.map(named).join(' ').replaceAll('the crank', 'the handle'),
      conventions: [
        'Dial: what is to be set past the whole turns, to the nearest minute. Error: how far that goes too far (−: not far enough), in seconds of arc.',
        'Where the error is not nought do not add up dial readings, for the error adds up with them. Add up the exact angle, and set each tooth from the start.',
        'Come up to the line from the same side every time, and clamp the table before the cut.',
      ],
      cautions: ['indexing'],
      tables: tables.map((table) => tableOf(table, tables.length > 1, desk)),
    };
  },
};

function tableOf(table: RotaryTable, titled: boolean, desk: Desk): Table {
  const circles = [linesOf(table) ?? 0];
  return {
    ...(titled ? { title: table.name } : {}),
    columns: [
      figures('Count'),
      figures('Exact angle'),
      figures('Turns'),
      figures('Dial'),
      figures('Error', '″'),
    ],
    rows: countsTo(MOST).map((divisions) => {
      const given = { divisions, ratio: table.ratio, circles, diameter: 50 };
      const move = desk.work('dividing.nearest', given);
      return {
        cells: [
          String(divisions),
          desk.work('holes.circle', { holes: divisions, diameter: 1 }).angle('stepAngle'),
          move.number('turns', 0),
          move.figure('holes', inWords),
          move.figure('stepErrorArcSeconds', (error) => formatNumber(Number(error), 1)),
        ],
      };
    }),
  };
}

/** Minutes of arc, as a dial has them: `3° 26′`. */
const inWords = (minutes: unknown): string =>
  `${Math.floor(Number(minutes) / 60)}°\u00A0${Number(minutes) % 60}′`;
