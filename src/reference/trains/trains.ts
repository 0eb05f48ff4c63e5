import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Desk } from '../desk.js';
import { type Cell, figures, type Row, type SheetKind, words } from '../sheet.js';

interface Train {
  readonly wheels: readonly number[];
  readonly pinions: readonly number[];
}

/** Beats an hour of common pendulums, slowest first, by an escape wheel of so many teeth. */
const ESCAPE = 30;
const BEATS = [3600, 4500, 4800, 5400, 6000, 6300, 6750, 7200, 8100];
/** Sets to a cell; wheels and pinions that clocks have. */
const SETS = 3;
const BOUNDS = { stages: 2, minLeaves: 7, maxLeaves: 12, minTeeth: 48, maxTeeth: 96 };

export const trains: SheetKind = {
  name: 'trains',
  title: 'Beats, pendulums and trains',
  line: 'pendulum and sets of wheels for 3600 to 8100 beats an hour',
  make: (desk) => ({
    conventions: [
      `Escape wheel of ${ESCAPE} teeth: two beats for each tooth. The centre wheel turns once an hour.`,
      'Pendulum: length in theory, from the point it swings on to the centre of oscillation, with g 9.80665 m/s². The rating nut does the rest.',
      `64/8 × 60/8: a centre wheel of 64 driving a third pinion of 8, and a third wheel of 60 driving an escape pinion of 8. Sets of ${BOUNDS.minLeaves} to ${BOUNDS.maxLeaves} leaves and ${BOUNDS.minTeeth} to ${BOUNDS.maxTeeth} teeth; there are others.`,
    ],
    cautions: ['pivots'],
    tables: [
      {
        columns: [
          figures('Beats an hour'),
          figures('Beats a minute'),
          figures('Pendulum', 'mm'),
          figures('Pendulum', 'in'),
          words('Sets of fewest teeth'),
          words('Both pinions alike'),
        ],
        rows: BEATS.map((beats) => rowOf(beats, desk)),
      },
    ],
  }),
};

function rowOf(beatsPerHour: number, desk: Desk): Row {
  const pendulum = desk.work('pendulum.length', { beatsPerHour });
  const found = desk.work('train.find', { ratio: `${beatsPerHour}/${2 * ESCAPE}`, ...BOUNDS });
  const [first] = found.found.trains as readonly Train[];
  const minute: Cell = first
    ? desk
        .work('train.beats', { wheels: first.wheels, pinions: first.pinions, escapeTeeth: ESCAPE })
        .number('beatsPerMinute', 1)
    : '';
  const sets = (which: (train: Train) => boolean): Cell =>
    found.figure('trains', (all) =>
      (all as readonly Train[]).filter(which).slice(0, SETS).map(inWords).join(', '),
    );
  return {
    cells: [
      String(beatsPerHour),
      minute,
      pendulum.number('length', 1),
      pendulum.figure('length', (mm) => formatNumber(Number(mm) / MM_PER_INCH, 2)),
      sets(() => true),
      sets(({ pinions }) => pinions.every((leaves) => leaves === pinions[0])),
    ],
  };
}

/** `64/8 × 60/8`, on one line. */
const inWords = ({ wheels, pinions }: Train): string =>
  wheels.map((teeth, at) => `${teeth}/${pinions[at]}`).join('\u00A0×\u00A0');
