import type { Desk } from '../desk.js';
import { circlesOf, type Indexer } from './heads.js';

/** Counts that wall sheets go to. */
export const LEAST = 2;
export const MOST = 130;

/** Each count from one to another. */
export const countsTo = (most: number, least = LEAST): number[] =>
  Array.from({ length: most - least + 1 }, (_, at) => least + at);

/** The counts that a head does not give by simple indexing. */
export function notSimple(head: Indexer, desk: Desk): number[] {
  const circles = circlesOf(head);
  return countsTo(MOST).filter(
    (divisions) => !desk.work('dividing.simple', { divisions, ratio: head.ratio, circles }).found.possible,
  );
}

/** What a sheet for such counts says where there are none for it. */
export const noneIn = (tables: readonly unknown[]): string[] =>
  tables.length > 0 ? [] : [`No count up to ${MOST} is for this sheet, with these plates.`];
