import type { Desk } from '../desk.js';
import { type Cell, figures, type Row, type SheetKind, type Table, words } from '../sheet.js';
import { aHead, circlesOf, type Indexer, indexersOf, named } from './heads.js';
import { countsTo, MOST } from './not-simple.js';

interface Setting {
  readonly holes: number;
  readonly circle: number;
}

/** Above the counts that are told one by one, those that can be had are told up to here. */
const FARTHEST = 400;

export const simpleIndexing: SheetKind = {
  name: 'simple-indexing',
  title: 'Simple indexing',
  line: `turns and spaces for 2 to ${FARTHEST} divisions, on each plate of each dividing head`,
  needs: aHead,
  make: (desk, kit) => {
    const heads = indexersOf(kit);
    return {
      machine: heads.map(named).join(' '),
      conventions: [
        '“8 on 15” is 8 spaces on the circle of 15 holes, after the whole turns. Spaces are counted, not holes: the sector arms hold one hole more.',
        'On each plate the smallest circle that serves. No spaces told: whole turns only, on any circle.',
        `“none”: no plate serves. See the sheets on compound and differential indexing.`,
      ],
      cautions: ['indexing'],
      tables: heads.flatMap((head) => tablesOf(head, heads.length > 1 ? `${head.name}: ` : '', desk)),
    };
  },
};

function tablesOf(head: Indexer, prefix: string, desk: Desk): Table[] {
  const note = head.plates
    .map((circles, at) => `Plate ${at + 1}: circles of ${circles.join(', ')}.`)
    .join(' ');
  const columns = [
    figures('Count'),
    figures('Turns'),
    ...head.plates.map((_, at) => words(`Plate ${at + 1}`)),
  ];
  const far = countsTo(FARTHEST, MOST + 1).filter(
    (divisions) =>
      desk.work('dividing.simple', { divisions, ratio: head.ratio, circles: circlesOf(head) }).found.possible,
  );
  return [
    {
      title: `${prefix}2 to ${MOST} divisions`,
      note,
      columns,
      rows: countsTo(MOST).map((count) => rowOf(count, head, desk)),
    },
    {
      title: `${prefix}${MOST + 1} to ${FARTHEST} divisions: those that can be had`,
      columns,
      rows: far.map((count) => rowOf(count, head, desk)),
    },
  ].filter(({ rows }) => rows.length > 0);
}

function rowOf(divisions: number, head: Indexer, desk: Desk): Row {
  const { ratio, plates } = head;
  const all = desk.work('dividing.simple', { divisions, ratio, circles: circlesOf(head) });
  if (!all.found.possible)
    return {
      cells: [
        String(divisions),
        '',
        all.figure('possible', (possible) => (possible ? '' : 'none')),
        ...plates.slice(1).map(() => ''),
      ],
    };
  const onPlate = (circles: readonly number[]): Cell =>
    all.figure('settings', (settings) => {
      const first = (settings as readonly Setting[]).find(({ circle }) => circles.includes(circle));
      return first && first.holes > 0 ? `${first.holes}\u00A0on\u00A0${first.circle}` : '';
    });
  return { cells: [String(divisions), all.number('turns', 0), ...plates.map(onPlate)] };
}
