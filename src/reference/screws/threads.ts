import { clearanceHoles, clearanceSources } from '../../handbook/screws/clearance-holes.js';
import { MM_PER_INCH } from '../../units/length.js';

/** A thread as it is listed, and as the catalogue of calculations is given it. */
export interface ListedThread {
  readonly name: string;
  readonly given: Readonly<Record<string, string | number>>;
  /** Hole that lets the screw through, mm. */
  readonly clear: number | undefined;
}

/** Threads of one series. */
export interface ListedSeries {
  readonly title: string;
  readonly threads: readonly ListedThread[];
  /** Its pitches are told as threads to the inch. */
  readonly inch: boolean;
  /** Where its clearance holes were read. */
  readonly clearances: string;
}

const of = (series: string, sizes: readonly string[]): ListedThread[] =>
  sizes.map((size) => ({
    name: size.replace('x', ' × '),
    given: { series, size },
    clear: clearanceHoles[size] ?? clearanceHoles[size.split(/[ x]/)[0] as string],
  }));

/** Outside diameter, threads to the inch, and clearance hole: inches. The profile is that of ISO threads. */
const UNIFIED: readonly (readonly [name: string, diameter: number, tpi: number, clear: number])[] = [
  ['0-80 UNF', 0.06, 80, 0.0635],
  ['2-56 UNC', 0.086, 56, 0.089],
  ['4-40 UNC', 0.112, 40, 0.116],
  ['6-32 UNC', 0.138, 32, 0.144],
  ['8-32 UNC', 0.164, 32, 0.1695],
  ['10-24 UNC', 0.19, 24, 0.196],
  ['10-32 UNF', 0.19, 32, 0.196],
  ['1/4-20 UNC', 0.25, 20, 0.257],
  ['1/4-28 UNF', 0.25, 28, 0.257],
  ['5/16-18 UNC', 0.3125, 18, 0.323],
  ['5/16-24 UNF', 0.3125, 24, 0.323],
  ['3/8-16 UNC', 0.375, 16, 0.386],
  ['3/8-24 UNF', 0.375, 24, 0.386],
];

const inches = ['1/8x40', '5/32x40', '3/16x40', '7/32x40', '1/4x40', '1/4x32', '5/16x40', '5/16x32'];

/** The threads that model engineers use, by series. */
export const threadsInUse: readonly ListedSeries[] = [
  {
    title: 'ISO metric, coarse',
    threads: of('iso', ['M1.6', 'M2', 'M2.5', 'M3', 'M3.5', 'M4', 'M5', 'M6', 'M8', 'M10', 'M12']),
    inch: false,
    clearances: clearanceSources.iso,
  },
  {
    title: 'British Association',
    threads: of(
      'ba',
      Array.from({ length: 11 }, (_, number) => `${number} BA`),
    ),
    inch: false,
    clearances: clearanceSources.ba,
  },
  {
    title: 'Model engineers’ series, 40 and 32 to the inch',
    threads: of('me', [...inches, '3/8x40', '3/8x32', '7/16x40', '1/2x32']),
    inch: true,
    clearances: clearanceSources.inch,
  },
  {
    title: 'British Standard Whitworth and Fine',
    threads: of('whitworth', [
      ...['1/8 BSW', '5/32 BSW', '3/16 BSW', '3/16 BSF', '1/4 BSW', '1/4 BSF', '5/16 BSW', '5/16 BSF'],
      ...['3/8 BSW', '3/8 BSF', '7/16 BSW', '7/16 BSF', '1/2 BSW', '1/2 BSF'],
    ]),
    inch: true,
    clearances: clearanceSources.inch,
  },
  {
    title: 'Unified, coarse and fine',
    threads: UNIFIED.map(([name, diameter, tpi, clear]) => ({
      name,
      given: { series: 'iso', diameter: MM_PER_INCH * diameter, pitch: MM_PER_INCH / tpi },
      clear: MM_PER_INCH * clear,
    })),
    inch: true,
    clearances: clearanceSources.unified,
  },
];
