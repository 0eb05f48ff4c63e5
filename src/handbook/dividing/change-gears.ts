import type { Citation } from '../record.js';

/** The change gears commonly supplied for differential indexing on a 40:1 head. */
export const commonGears: readonly number[] = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

/** Whether a rack holds just these wheels: each taken off it in turn, and none left over. */
export function isCommonSet(gears: readonly number[]): boolean {
  const rack = [...gears];
  const all = commonGears.every((teeth) => {
    const place = rack.indexOf(teeth);
    if (place >= 0) rack.splice(place, 1);
    return place >= 0;
  });
  return all && rack.length === 0;
}

export const commonGearsSource: Citation = {
  work: 'treatise-milling',
  at: 'change gears supplied with the 40:1 head, from memory',
};

/** Which way the plate turns, and through how many idle wheels, as the tables for a 40:1 head give it. */
const rows = [
  { wheels: 2, way: 'same', idlers: 1 },
  { wheels: 2, way: 'opposite', idlers: 2 },
  { wheels: 4, way: 'same', idlers: 0 },
  { wheels: 4, way: 'opposite', idlers: 1 },
] as const;

/** Idle wheels for a train of so many wheels; the approximate count above the one wanted turns the plate with the crank.
 * Brown & Sharpe, Practical Treatise on Milling, p. 57, for the rows of 1 and 2 idlers. */
export function idlersByTable(wheels: number, more: boolean): number | undefined {
  return rows.find((row) => row.wheels === wheels && (row.way === 'same') === more)?.idlers;
}
