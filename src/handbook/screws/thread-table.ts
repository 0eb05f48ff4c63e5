import type { Citation } from '../record.js';
import {
  association,
  brass,
  type InchRow,
  modelEngineer,
  whitworthCoarse,
  whitworthFine,
} from './british-sizes.js';
import { isoCoarse, isoFine } from './iso-sizes.js';
import { proportions } from './proportions.js';

/** A thread of a standard, mm. */
export interface TabledThread {
  /** `M6`, `M6 × 0.75`, `1/4 BSW`, `2 BA`, `3/16 × 40 ME`. */
  readonly name: string;
  readonly diameter: number;
  readonly pitch: number;
  /** Minor or core diameter as printed. */
  readonly minor?: number;
  readonly source: Citation;
}

/** The series of threads. */
export type Series = keyof typeof proportions;

const INCH = 25.4;

const ofInches =
  (source: Citation, name: (row: InchRow) => string) =>
  (row: InchRow): TabledThread => {
    const [, diameter, tpi, core] = row;
    return {
      name: name(row),
      diameter: INCH * diameter,
      pitch: INCH / tpi,
      ...(core === undefined ? {} : { minor: INCH * core }),
      source,
    };
  };

const plan: Citation = { work: 'iso261', at: 'fine series, from memory' };
const coarse: Citation = { work: 'iso68', at: 'ISO 724, basic minor diameter, from memory' };
const bs84 = (at: string): Citation => ({ work: 'bs84', at: `${at}, from memory` });

/** Every thread of each series, smallest first within its kind. */
export const threadTable: Readonly<Record<Series, readonly TabledThread[]>> = {
  iso: [
    ...isoCoarse.map(([diameter, pitch, minor]) => ({
      name: `M${diameter}`,
      diameter,
      pitch,
      minor,
      source: coarse,
    })),
    ...isoFine.flatMap(([diameter, pitches]) =>
      pitches.map((pitch) => ({ name: `M${diameter} × ${pitch}`, diameter, pitch, source: plan })),
    ),
  ],
  whitworth: [
    ...whitworthCoarse.map(ofInches(bs84('BSW, core diameters'), ([size]) => `${size} BSW`)),
    ...whitworthFine.map(ofInches(bs84('BSF, core diameters'), ([size]) => `${size} BSF`)),
    ...brass.map(
      ofInches({ work: 'practice', at: 'British Standard Brass, 26 tpi' }, ([size]) => `${size} BSB`),
    ),
  ],
  ba: association.map(([diameter, pitch], number) => ({
    name: `${number} BA`,
    diameter,
    pitch,
    source: { work: 'bs93', at: 'diameters and pitches as printed; 5, 7, 11–13, 15 and 16 from memory' },
  })),
  me: modelEngineer.map(
    ofInches({ work: 'me-threads', at: '32 and 40 tpi; sizes from memory' }, ([size, , tpi]) => {
      return `${size} × ${tpi} ME`;
    }),
  ),
};

/** A thread of a series by its name. */
export const tabled = (series: Series, name: string): TabledThread | undefined =>
  threadTable[series].find((thread) => thread.name === name);

/** The names of the threads that have this diameter and pitch, mm, to a hundredth of a micron: 1/4 BSF is 1/4 BSB too. */
export const namesOf = (series: Series, diameter: number, pitch: number): readonly string[] =>
  threadTable[series]
    .filter((thread) => Math.abs(thread.diameter - diameter) < 1e-5 && Math.abs(thread.pitch - pitch) < 1e-5)
    .map(({ name }) => name);

/**
 * The pitch that a thread must have by its printed minor diameter, mm: in the steps of its standard, twentieths of a
 * millimetre or half threads to the inch. Where no minor diameter is printed, the printed pitch.
 */
export function pitchByMinor(series: Series, { diameter, pitch, minor }: TabledThread): number {
  if (minor === undefined) return pitch;
  const reckoned = (diameter - minor) / proportions[series].minor;
  return series === 'iso' ? Math.round(20 * reckoned) / 20 : (2 * INCH) / Math.round((2 * INCH) / reckoned);
}
