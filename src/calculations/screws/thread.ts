import { InputError } from '../../diagnostics/errors.js';
import type { Citation } from '../../handbook/record.js';
import { proportions } from '../../handbook/screws/proportions.js';
import {
  namesOf,
  pitchByMinor,
  type Series,
  type TabledThread,
  threadTable,
} from '../../handbook/screws/thread-table.js';
import { mm } from '../found.js';
import { choice, length, optional } from '../quantity.js';
import { decimals } from '../working.js';
import { seriesNames } from './forms.js';
import { type SizedThread, size, sizesOf, threadOfSize } from './size.js';

/** How a thread is named to a calculation: by its size, or by diameter and pitch. */
export const threadGiven = {
  series: choice('series of threads', seriesNames),
  size: optional(size),
  diameter: optional(length('', 'diameter over the crests', 0.3, 150)),
  pitch: optional(length('', 'pitch', 0.05, 12)),
};

/** A thread as it was given. */
export interface GivenThread {
  readonly series: Series;
  readonly size?: string | undefined;
  readonly diameter?: number | undefined;
  readonly pitch?: number | undefined;
}

/** @throws {InputError} unless it is one size of the series, or a diameter and a pitch that make a thread */
export function refuseNoThread(g: GivenThread): void {
  if (g.size !== undefined) {
    for (const key of ['diameter', 'pitch'] as const)
      if (g[key] !== undefined)
        throw new InputError(key, g[key], 'a size, or a diameter and a pitch, not both');
    if (!threadOfSize(g.series, g.size))
      throw new InputError('size', g.size, `${sizesOf[g.series]}; or a diameter and a pitch`);
    return;
  }
  if (g.diameter === undefined && g.pitch === undefined)
    throw new InputError('size', undefined, `${sizesOf[g.series]}; or a diameter and a pitch`);
  if (g.diameter === undefined) throw new InputError('diameter', undefined, 'a diameter with the pitch');
  if (g.pitch === undefined) throw new InputError('pitch', undefined, 'a pitch with the diameter');
  if (g.pitch > g.diameter / 2)
    throw new InputError('pitch', g.pitch, `at most half the diameter, ${decimals(g.diameter / 2, 4)} mm`);
}

/** The thread that was asked for. */
export function threadOf(g: GivenThread): SizedThread {
  if (g.size !== undefined) return threadOfSize(g.series, g.size) as SizedThread;
  const { diameter = 0, pitch = 0 } = g;
  const name = namesOf(g.series, diameter, pitch)[0] ?? `${decimals(diameter, 4)} × ${decimals(pitch, 4)} mm`;
  return { diameter, pitch, name };
}

/** What every calculation on a thread tells of it. */
export const threadFound = {
  designation: { unit: '', name: 'designation' },
  majorDiameter: mm('d', 'major diameter'),
  pitch: mm('P_t', 'pitch'),
};

export const foundOf = ({ name, diameter, pitch }: SizedThread) => ({
  designation: name,
  majorDiameter: diameter,
  pitch,
});

/** The row of the handbook’s table that has the thread’s name; none for a thread of no series. */
const row = (g: GivenThread): TabledThread | undefined => {
  const { name } = threadOf(g);
  return threadTable[g.series].find((thread) => thread.name === name);
};

const asGiven: Citation = { work: 'derived', at: 'as it was given; no standard series has it' };
const source = (g: GivenThread): Citation => row(g)?.source ?? asGiven;

/** The table’s word on diameter, pitch and name. */
export const threadProofs = [
  {
    of: 'designation',
    source,
    value: (): unknown => true,
    measure: {
      name: 'whether the table has a thread of that name, diameter and pitch, or none for a thread with no name',
      of: (name: unknown, g: GivenThread): unknown => {
        const { diameter, pitch } = threadOf(g);
        const names = namesOf(g.series, diameter, pitch);
        return names.some((one) => one === name) || (names.length === 0 && g.size === undefined);
      },
    },
  },
  { of: 'majorDiameter', source, within: 1e-4, value: (g: GivenThread) => row(g)?.diameter ?? g.diameter },
  {
    of: 'pitch',
    source,
    within: 1e-4,
    value: (g: GivenThread) => {
      const thread = row(g);
      return thread ? pitchByMinor(g.series, thread) : g.pitch;
    },
  },
] as const;

/** The published factors for a thread, and its diameter and pitch as the table has them. */
export function publishedOf(g: GivenThread) {
  const thread = row(g);
  const { diameter, pitch } = thread ?? threadOf(g);
  return { ...proportions[g.series], diameter, pitch };
}

export const factors = (g: GivenThread): Citation => proportions[g.series].source;

/** Factors are printed to six places: allowance in mm. */
export const factorWithin = (g: GivenThread): number =>
  3e-6 * threadOf(g).pitch + (g.size === undefined ? 1e-4 : 0);
