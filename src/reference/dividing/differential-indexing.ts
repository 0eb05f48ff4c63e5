import type { Desk } from '../desk.js';
import { type Figure, figures, type Row, type SheetKind, type Table, words } from '../sheet.js';
import { aGearedHead, circlesOf, type Indexer, named } from './heads.js';
import { noneIn, notSimple } from './not-simple.js';

interface Setting {
  readonly approximate: { readonly numerator: number; readonly denominator: number };
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
  readonly spindleGears: readonly number[];
  readonly plateGears: readonly number[];
  readonly gearRatio: { readonly numerator: number };
  readonly idlers: number;
}

export const differentialIndexing: SheetKind = {
  name: 'differential-indexing',
  title: 'Differential indexing',
  line: 'the near count, its move and the gears, for counts that no single circle gives',
  needs: aGearedHead,
  make: (desk, { heads }) => {
    const geared = heads.filter(({ gears }) => gears);
    const tables = geared
      .map((head) => tableOf(head, geared.length > 1, desk))
      .filter(({ rows }) => rows.length > 0);
    return {
      machine: geared.map((head) => `${named(head)} Gears ${(head.gears ?? []).join(', ')}.`).join(' '),
      conventions: [
        'Move the crank as for the near count: “12 on 15” is 12 spaces on the circle of 15 holes. The gears turn the plate meanwhile, and so make up the difference. Draw the plate’s back pin, so that it can turn.',
        'Drivers: the gear on the spindle, then the driver on the stud if there are two. Driven: the gear on the stud if there are two, then the one on the shaft that turns the plate.',
        'Plate: “with” turns the same way as the crank, “against” the other way. Idlers are as makers’ tables have them; heads differ. Before you cut turn the crank, and see which way the plate goes. If it is wrong, put in or take out one idler.',
        ...noneIn(tables),
      ],
      cautions: ['indexing', 'isolate-first'],
      tables,
    };
  },
};

function tableOf(head: Indexer, titled: boolean, desk: Desk): Table {
  return {
    ...(titled ? { title: head.name } : {}),
    columns: [
      figures('Count'),
      figures('Near count'),
      figures('Turns'),
      words('Spaces'),
      words('Drivers'),
      words('Driven'),
      words('Plate'),
      figures('Idlers'),
    ],
    rows: notSimple(head, desk).flatMap((divisions) => rowOf(divisions, head, desk)),
  };
}

function rowOf(divisions: number, head: Indexer, desk: Desk): Row[] {
  const found = desk.work('dividing.differential', {
    divisions,
    ratio: head.ratio,
    circles: circlesOf(head),
    gears: head.gears,
  });
  if (!found.found.possible) return [];
  const told = (of: (setting: Setting) => string): Figure =>
    found.figure('settings', (settings) => of(plainest(settings as readonly Setting[])));
  return [
    {
      cells: [
        String(divisions),
        told(({ approximate: { numerator, denominator } }) =>
          denominator === 1 ? String(numerator) : `${numerator}/${denominator}`,
        ),
        told(({ turns }) => String(turns)),
        told(({ holes, circle }) => (holes === 0 ? 'none' : `${holes}\u00A0on\u00A0${circle}`)),
        told(({ spindleGears }) => spindleGears.join(', ')),
        told(({ plateGears }) => [...plateGears].reverse().join(', ')),
        told(({ gearRatio: { numerator } }) => (numerator > 0 ? 'with' : 'against')),
        told(({ idlers }) => String(idlers)),
      ],
    },
  ];
}

/** The simplest whose near count is a whole number, as makers’ tables have it; else the simplest. */
const plainest = (settings: readonly Setting[]): Setting =>
  (settings.find(({ approximate: { denominator } }) => denominator === 1) ?? settings[0]) as Setting;
