import { threadTable } from '../../../src/handbook/screws/thread-table.js';
import type { FigureValues } from './values.js';

const SIZES = [
  ['iso', 'M1'],
  ['iso', 'M2'],
  ['iso', 'M3'],
  ['iso', 'M6'],
  ['iso', 'M6 × 0.75'],
  ['iso', 'M10'],
  ['iso', 'M24'],
  ['iso', 'M64'],
  ['whitworth', '1/16 BSW'],
  ['whitworth', '1/4 BSW'],
  ['whitworth', '1/4 BSF'],
  ['whitworth', '1 BSW'],
  ['whitworth', '2 BSW'],
  ['me', '3/16 × 40 ME'],
  ['me', '3/8 × 32 ME'],
  ['ba', '0 BA'],
  ['ba', '2 BA'],
  ['ba', '7 BA'],
] as const;

/** Threads as a lesson gives them to a figure. */
const threads = SIZES.map(([series, designation]) => {
  const row = threadTable[series].find(({ name }) => name === designation);
  if (!row) throw new Error(`no thread ${designation}`);
  return { series, designation, majorDiameter: row.diameter, pitch: row.pitch };
});

export const screws: FigureValues = {
  'thread-form': {
    typical: { series: 'iso', designation: 'M6', majorDiameter: 6, pitch: 1 },
    sweep: [...threads, { series: 'iso', majorDiameter: 6, pitch: 0.9 }],
  },
  'tapping-drill': {
    typical: {
      series: 'iso',
      designation: 'M6',
      majorDiameter: 6,
      pitch: 1,
      base: 'external',
      hole: 5.1,
    },
    sweep: threads.flatMap((thread) =>
      [0.25, 0.6, 0.75, 0.97].flatMap((share) =>
        (['external', 'internal'] as const).map((base) => ({
          ...thread,
          base,
          hole: thread.majorDiameter - share * 1.2 * thread.pitch,
        })),
      ),
    ),
  },
  'three-wires': {
    typical: { series: 'iso', designation: 'M10', majorDiameter: 10, pitch: 1.5 },
    sweep: [
      ...threads,
      { series: 'iso', majorDiameter: 10, pitch: 1.5, wireDiameter: 0.77 },
      { series: 'iso', majorDiameter: 10, pitch: 1.5, wireDiameter: 1.5 },
      { series: 'iso', majorDiameter: 3, pitch: 1.5 },
      { series: 'iso', majorDiameter: 150, pitch: 12 },
      { series: 'iso', majorDiameter: 64, pitch: 1.5 },
      { series: 'whitworth', majorDiameter: 25.4, pitch: 25.4 / 26 },
    ],
  },
  'change-wheels': {
    typical: { drivers: [40, 20], driven: [60, 50] },
    sweep: [
      { drivers: 40, driven: 127 },
      { drivers: 20, driven: 20 },
      { drivers: 10, driven: 200 },
      { drivers: 60, driven: 30, idler: 45 },
      { drivers: 20, driven: 20, idler: 100 },
      { drivers: [20, 20], driven: [20, 20] },
      { drivers: [63, 20], driven: [80, 50] },
      { drivers: [55, 63], driven: [80, 55] },
      { drivers: [200, 10], driven: [10, 200] },
      { drivers: [10, 200], driven: [200, 10] },
      { drivers: [127, 100], driven: [120, 110] },
      { drivers: [200, 200], driven: [200, 200] },
    ],
  },
};
