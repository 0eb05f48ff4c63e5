import { givensFromKit } from '../../kit/givens.js';
import type { Kit } from '../../kit/schema.js';
import { formatNumber } from '../../units/format.js';
import type { Desk } from '../desk.js';
import { figures, type Row, type SheetKind, words } from '../sheet.js';
import { threadsInUse } from './threads.js';

interface Setting {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  readonly errorPpm: number;
  readonly errorPer100mm: number;
}

/** Pitches, mm, and threads to the inch, that model work asks for. */
const PITCHES = [0.25, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3];
const THREADS = [60, 48, 40, 36, 32, 28, 26, 24, 22, 20, 18, 16, 14, 12, 11, 10, 9, 8];
/** Parts per million: enough for a screw in its nut. What is further out is not offered. */
const TOLERANCE = 2000;

export const changeWheels: SheetKind = {
  name: 'change-wheels',
  title: 'Change wheels',
  line: 'wheels of the lathe for metric, inch and BA threads, and what is wrong with each where it is not exact',
  needs: {
    words: 'a lathe with a lead screw and change wheels',
    in: ({ lathe }) => (lathe?.changeWheels.length ?? 0) > 1,
  },
  make: (desk, kit) => ({
    machine: machineOf(kit),
    conventions: [
      'Drivers and driven from the spindle to the lead screw: the first driver goes on the spindle, the last driven on the screw. Idlers do not count. Try the wheels on the banjo: whether they clear is not reckoned here.',
      'Error: how much longer the thread comes out (−: shorter), in per cent. That is also mm in 100 mm. “none”: no set of these wheels comes within 0.2 %.',
      'Half nut: “any” may be let go and closed again anywhere. “shut” must stay shut until the thread is done: stop, draw the tool back, and reverse.',
    ],
    cautions: ['screwcutting', 'isolate-first'],
    tables: [
      {
        title: 'Metric pitches',
        columns: columnsOf(figures('Pitch', 'mm')),
        rows: PITCHES.map((pitch) => rowOf(formatNumber(pitch, 2), { pitch }, desk, kit)),
      },
      {
        title: 'Threads to the inch',
        columns: columnsOf(figures('Threads', 'an inch')),
        rows: THREADS.map((tpi) => rowOf(String(tpi), { tpi }, desk, kit)),
      },
      {
        title: 'British Association',
        columns: columnsOf(words('Thread')),
        rows: (threadsInUse.find(({ title }) => title === 'British Association')?.threads ?? []).map(
          ({ name, given }) =>
            rowOf(name, { pitch: Number(desk.work('thread.form', given).found.pitch) }, desk, kit),
        ),
      },
    ],
  }),
};

const columnsOf = (thread: ReturnType<typeof figures>) => [
  thread,
  words('Drivers'),
  words('Driven'),
  figures('Error', '%'),
  words('Half nut'),
];

function rowOf(name: string, thread: Readonly<Record<string, number>>, desk: Desk, kit: Kit): Row {
  const open = ['leadPitch', 'leadTpi', 'wheels'];
  const given = givensFromKit(kit, 'screwcut.changeWheels', open, { ...thread, tolerancePpm: TOLERANCE });
  const found = desk.work('screwcut.changeWheels', given);
  if (!found.found.possible)
    return { cells: [name, found.figure('possible', (possible) => (possible ? '' : 'none')), '', '', ''] };
  const best = (of: (setting: Setting) => string) =>
    found.figure('settings', (settings) => of(nearestOf(settings as readonly Setting[])));
  return {
    cells: [
      name,
      best(({ drivers }) => drivers.join(' × ')),
      best(({ driven }) => driven.join(' × ')),
      best(({ errorPer100mm }) => formatNumber(errorPer100mm, 3)),
      best(({ drivers, driven }) => (product(driven) % product(drivers) === 0 ? 'any' : 'shut')),
    ],
  };
}

/** All teeth of one side. Where driven over drivers is whole, so is the lead screw’s lead over the pitch that is cut. */
const product = (wheels: readonly number[]): number => wheels.reduce((so, wheel) => so * wheel);

/** The least error, and of those the fewest wheels. */
function nearestOf(settings: readonly Setting[]): Setting {
  const order = (a: Setting, b: Setting) =>
    Math.abs(a.errorPpm) - Math.abs(b.errorPpm) || a.drivers.length - b.drivers.length;
  return [...settings].sort(order)[0] as Setting;
}

function machineOf({ lathe }: Kit): string {
  const { leadScrew, changeWheels: wheels = [] } = lathe ?? { leadScrew: { lead: 0 } };
  const screw = 'lead' in leadScrew ? `${leadScrew.lead} mm` : `${leadScrew.tpi} threads an inch`;
  return `Lead screw ${screw}; wheels ${wheels.join(', ')}`;
}
