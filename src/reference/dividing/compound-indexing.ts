import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Desk } from '../desk.js';
import { figures, type Row, type SheetKind, type Table, words } from '../sheet.js';
import { aHead, circlesOf, type Indexer, indexersOf, named } from './heads.js';
import { noneIn, notSimple } from './not-simple.js';

interface Setting {
  readonly plate: number;
  readonly turns: number;
  readonly circle1: number;
  readonly holes1: number;
  readonly sense: 'forward' | 'back';
  readonly circle2: number;
  readonly holes2: number;
}

export const compoundIndexing: SheetKind = {
  name: 'compound-indexing',
  title: 'Compound indexing',
  line: 'two moves on one plate, for counts that no single circle gives, and how far off the nearest single move is',
  needs: aHead,
  make: (desk, kit) => {
    const heads = indexersOf(kit);
    const titled = (head: Indexer) => (heads.length > 1 ? `: ${head.name}` : '');
    const tables = heads
      .flatMap((head) => [exactOf(head, titled(head), desk), nearOf(head, titled(head), desk)])
      .filter(({ rows }) => rows.length > 0);
    return {
      machine: heads.map(named).join(' '),
      conventions: [
        'First move: the back pin holds the plate; turn the crank by the turns and spaces told. Second move: leave the crank’s pin in its hole, draw the back pin, and turn plate and crank together: forward is the same way as the first move. It needs a back pin that reaches the circle told.',
        'Spaces are counted, not holes. Both circles are on one plate, and the two moves together are exact. A count that is not here has a single move, needs differential indexing, or cannot be had.',
        'Take up backlash the same way every time: go too far back, and come forward.',
        ...noneIn(tables),
      ],
      cautions: ['indexing'],
      tables,
    };
  },
};

function exactOf(head: Indexer, suffix: string, desk: Desk): Table {
  return {
    title: `Exact, by two moves${suffix}`,
    columns: [
      figures('Count'),
      figures('Plate'),
      figures('Turns'),
      words('First move'),
      words('Second move'),
    ],
    rows: notSimple(head, desk).flatMap((divisions) => rowOf(divisions, head, desk)),
  };
}

const compound = (divisions: number, { ratio, plates }: Indexer, desk: Desk) =>
  desk.work('dividing.compound', { divisions, ratio, plates });

function rowOf(divisions: number, head: Indexer, desk: Desk): Row[] {
  const found = compound(divisions, head, desk);
  if (!found.found.possible) return [];
  const first = (of: (setting: Setting) => string) =>
    found.figure('settings', (settings) => of((settings as readonly [Setting])[0]));
  return [
    {
      cells: [
        String(divisions),
        first(({ plate }) => formatNumber(plate, 0)),
        first(({ turns }) => formatNumber(turns, 0)),
        first(({ holes1, circle1 }) => `${holes1}\u00A0on\u00A0${circle1}`),
        first(({ sense, holes2, circle2 }) => `${sense} ${holes2}\u00A0on\u00A0${circle2}`),
      ],
    },
  ];
}

/** A wheel to see errors by, mm. */
const WHEEL = { mm: 50, inch: 2 * MM_PER_INCH };

/** Counts that a head gives in no way at all, and what comes of the nearest single move. */
function nearOf(head: Indexer, suffix: string, desk: Desk): Table {
  const { ratio } = head;
  const circles = circlesOf(head);
  const none = notSimple(head, desk).filter((divisions) => {
    if (compound(divisions, head, desk).found.possible) return false;
    const given = { divisions, ratio, circles, gears: head.gears };
    return !(head.gears && desk.work('dividing.differential', given).found.possible);
  });
  const diameter = WHEEL[desk.units === 'mm' ? 'mm' : 'inch'];
  return {
    title: `Only nearly${suffix}`,
    note: `Not for wheels that must run: what is left over at the end, on a wheel of ${desk.units === 'mm' ? '50 mm' : '2 in'}, all falls on the last tooth (+: it comes out thin; −: thick).`,
    columns: [
      figures('Count'),
      figures('Turns'),
      figures('Spaces'),
      figures('On circle'),
      figures('Each move', '″'),
      figures('At the end', '″'),
      figures('At the rim', desk.lengths),
    ],
    rows: none.map((divisions) => {
      const move = desk.work('dividing.nearest', { divisions, ratio, circles, diameter });
      return {
        cells: [
          String(divisions),
          ...['turns', 'holes', 'circle'].map((key) => move.number(key, 0)),
          move.number('stepErrorArcSeconds', 1),
          move.number('closingErrorArcSeconds', 0),
          move.length('closingErrorAtRim', 3),
        ],
      };
    }),
  };
}
