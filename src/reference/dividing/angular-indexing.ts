import { formatNumber } from '../../units/format.js';
import type { Desk } from '../desk.js';
import { figures, type SheetKind, type Table } from '../sheet.js';
import { aHead, circlesOf, type Indexer, indexersOf, named } from './heads.js';

/** Angles, minutes of arc: from about one space of a common plate to a right angle, as drawings ask for them. */
const MINUTES = [
  ...[10, 15, 20, 30, 40, 45, 50],
  ...[1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 7.5, 8, 9, 10, 11.25, 12, 14, 15, 18, 20, 22.5, 24, 25].map(
    (degrees) => 60 * degrees,
  ),
  ...[30, 32, 35, 36, 40, 45, 48, 50, 54, 55, 60, 65, 67.5, 70, 72, 75, 80, 85, 90].map(
    (degrees) => 60 * degrees,
  ),
];
const PLACES = 1;

export const angularIndexing: SheetKind = {
  name: 'angular-indexing',
  title: 'Indexing by angle',
  line: 'turns and spaces for angles from 10′ to 90°, with the error where it is not exact',
  needs: aHead,
  make: (desk, kit) => {
    const heads = indexersOf(kit);
    return {
      machine: heads.map(named).join(' '),
      conventions: [
        'Spaces on the circle of holes, after the whole turns. Spaces are counted, not holes: the sector arms hold one hole more.',
        'The circle is the one that comes nearest. Error: how far the move goes too far (−: not far enough), in seconds of arc; 3600″ are a degree. Moves that are repeated add it up.',
      ],
      cautions: ['indexing'],
      tables: heads.map((head) => tableOf(head, heads.length > 1, desk)),
    };
  },
};

function tableOf(head: Indexer, titled: boolean, desk: Desk): Table {
  return {
    ...(titled ? { title: head.name } : {}),
    columns: [
      figures('Angle'),
      figures('Turns'),
      figures('Spaces'),
      figures('On circle'),
      figures('Error', '″'),
    ],
    rows: MINUTES.map((minutes) => {
      const given = { angle: minutes / 60, ratio: head.ratio, circles: circlesOf(head) };
      const move = desk.work('dividing.angle', given);
      return {
        cells: [
          inWords(minutes),
          move.number('turns', 0),
          move.number('holes', 0),
          move.number('circle', 0),
          move.figure('errorArcSeconds', (error) => formatNumber(Number(error), PLACES)),
        ],
      };
    }),
  };
}

/** `7° 30′`, as drawings have it. */
function inWords(minutes: number): string {
  const degrees = Math.floor(minutes / 60);
  return `${degrees}°\u00A0${formatNumber(minutes - 60 * degrees, 0)}′`;
}
