import type { Desk } from '../desk.js';
import { figures, type SheetKind, type Table, ticks, type WheelJob } from '../sheet.js';
import { aHead, circlesOf, type Indexer, indexersOf, named } from './heads.js';

interface Tooth {
  readonly tooth: number;
  readonly turns: number;
  readonly holes: number;
  readonly angle: string;
  readonly quarter: boolean;
}

/** Where no job is told, a wheel to see the use of it by. */
const EXAMPLE: WheelJob = { name: 'Example', teeth: 60 };

export const tallies: SheetKind = {
  name: 'tallies',
  title: 'Tally at the machine',
  line: 'where the crank stands for every tooth of each job, counted from the start, with boxes to tick',
  needs: aHead,
  make: (desk, kit, jobs) => {
    const heads = indexersOf(kit);
    const able = jobs.filter(({ teeth }) => heads.some((head) => serves(teeth, head, desk)));
    const told =
      able.length > 0
        ? able
        : [EXAMPLE].filter(({ teeth }) => heads.some((head) => serves(teeth, head, desk)));
    const left = jobs.filter((job) => !able.includes(job));
    return {
      machine: heads.map(named).join(' '),
      conventions: [
        'Turns and spaces are counted from the start, not from the last tooth: so a slip shows at once. Spaces are from the hole that the pin started in, round the circle.',
        'A quarter of the way round is ruled off. Look at the marks on the blank there. The last row is the start again: the pin must fall into its first hole.',
        'Before the last cut look at what is left. It must be as wide as every tooth before it.',
        ...left.map(
          ({ name, teeth }) =>
            `Not here: ${name}, ${teeth} teeth. No single circle gives it; see compound and differential indexing.`,
        ),
      ],
      cautions: ['indexing'],
      tables: told.flatMap((job) => tableOf(job, heads, desk)),
    };
  },
};

const tally = (divisions: number, head: Indexer, desk: Desk) =>
  desk.work('dividing.tally', { divisions, ratio: head.ratio, circles: circlesOf(head) });

const serves = (teeth: number, head: Indexer, desk: Desk): boolean =>
  tally(teeth, head, desk).found.possible === true;

/** On the first head that can do it. */
function tableOf({ name, teeth }: WheelJob, heads: readonly Indexer[], desk: Desk): Table[] {
  const head = heads.find((one) => serves(teeth, one, desk));
  if (!head) return [];
  const found = tally(teeth, head, desk);
  const told = (at: number, of: (tooth: Tooth) => string) =>
    found.figure('rows', (all) => of((all as readonly Tooth[])[at] as Tooth));
  const on = heads.length > 1 ? `, ${head.name}` : '';
  return [
    {
      title: `${name}: ${teeth} teeth on the circle of ${found.found.circle} holes${on}`,
      apart: true,
      columns: [figures('Tooth'), figures('Turns'), figures('Spaces'), figures('Angle'), ticks('Cut')],
      rows: (found.found.rows as readonly Tooth[]).map(({ quarter, tooth }, at) => ({
        strong: quarter,
        cells: [
          String(tooth),
          told(at, ({ turns }) => String(turns)),
          told(at, ({ holes }) => String(holes)),
          told(at, ({ angle }) => angle),
          '',
        ],
      })),
    },
  ];
}
