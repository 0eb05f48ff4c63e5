import { drillSizesSource, gaugeDrills } from '../../handbook/screws/drill-sizes.js';
import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Desk } from '../desk.js';
import { type Cell, figures, type Row, type SheetKind, type Table, words } from '../sheet.js';
import { pitchColumn, pitchOf } from './pitch.js';
import { type ListedSeries, type ListedThread, threadsInUse } from './threads.js';

/** Shares of the full thread, %. */
const SHARES = [60, 65, 70, 75, 82];
const BASE = 'external';
/** The share for which a drill is looked out, and what shares are offered. */
const WANTED = 65;
const OFFERED = { least: 50, most: 85 };

const GAUGES = gaugeDrills.map(({ inches }) => MM_PER_INCH * inches);

export const tappingDrills: SheetKind = {
  name: 'tapping-drills',
  title: 'Tapping drills',
  line: 'the hole for 60 to 82 % of the full thread, with the base that the share is of, and clearance holes',
  make: (desk, { drills }) => {
    desk.read(drillSizesSource);
    return {
      conventions: [
        'Shares are of the thread as it is cut on the screw (external base). Books differ. M3 with a 2.5 mm drill is 82 % so, 92 % of the nut’s basic height, and 77 % in US tables.',
        `Number or letter: the one nearest to ${WANTED} %, and the share that it leaves.${drills.length > 0 ? ` Our drill: the same among the class’s own. A dash: none gives ${OFFERED.least} to ${OFFERED.most} %.` : ` A dash: none gives ${OFFERED.least} to ${OFFERED.most} %.`}`,
        'Between two drills take the larger, and try it on scrap: a drill cuts a little over its size. For most model work 60 to 70 % holds well and breaks fewer taps (common practice, no source).',
      ],
      cautions: ['drilling-plates'],
      tables: threadsInUse.map((series) => tableOf(series, drills, desk)),
    };
  },
};

function tableOf(series: ListedSeries, drills: readonly number[], desk: Desk): Table {
  desk.read(series.clearances);
  return {
    title: series.title,
    columns: [
      words('Thread'),
      pitchColumn(series),
      ...SHARES.map((share) => figures(`${share} %`, desk.lengths)),
      words('Number or letter'),
      figures('leaves', '%'),
      ...(drills.length > 0 ? [figures('Our drill', desk.lengths), figures('leaves', '%')] : []),
      figures('Clear', desk.lengths),
    ],
    rows: series.threads.map((thread) => rowOf(thread, series, drills, desk)),
  };
}

function rowOf(
  { name, given, clear }: ListedThread,
  series: ListedSeries,
  own: readonly number[],
  desk: Desk,
): Row {
  const drilled = (engagement: number, drills: readonly number[]) =>
    desk.work('thread.tappingDrill', { ...given, engagement, base: BASE, drills });
  /** The nearest of some drills, told in some way, and what it leaves. */
  const nearest = (drills: readonly number[], tell: (mm: number) => string): Cell[] => {
    const found = drilled(WANTED, drills);
    const share = Number(found.found.engagementAtNearest);
    const serves = share >= OFFERED.least && share <= OFFERED.most;
    return [
      found.figure('nearestDrill', (mm) => (serves ? tell(Number(mm)) : '–')),
      serves ? found.number('engagementAtNearest', 0) : '',
    ];
  };
  return {
    cells: [
      name,
      pitchOf(desk.work('thread.form', given), series),
      ...SHARES.map((share) => drilled(share, GAUGES).length('drill')),
      ...nearest(GAUGES, gaugeOf),
      ...(own.length > 0 ? nearest(own, (mm) => drilled(WANTED, own).lengthOf(mm)) : []),
      clear === undefined
        ? ''
        : formatNumber(desk.units === 'mm' ? clear : clear / MM_PER_INCH, desk.units === 'mm' ? 2 : 3),
    ],
  };
}

const gaugeOf = (mm: number): string =>
  gaugeDrills.find(({ inches }) => Math.abs(MM_PER_INCH * inches - mm) < 1e-6)?.name ?? '';
