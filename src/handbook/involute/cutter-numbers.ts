import { type Citation, practice } from '../record.js';

const rose: Citation = { work: 'rose-1887', at: 'standard set of eight' };
const tradeList = practice('the trade’s list of the set of eight');

/**
 * Teeth that each of the eight involute cutters serves, in the diametral-pitch series.
 * J. Rose, Modern Machine-Shop Practice (1887), pp. 71-74, read for Nos. 1, 2, 3, 5 and 7; the others are the trade's.
 * Rose prints No. 8 as 12 to 14, though 14 already belongs to No. 7; the trade list has 12 to 13, which is followed.
 */
export const diametralSeries = [
  { number: 1, from: 135, to: null, source: rose },
  { number: 2, from: 55, to: 134, source: rose },
  { number: 3, from: 35, to: 54, source: rose },
  { number: 4, from: 26, to: 34, source: tradeList },
  { number: 5, from: 21, to: 25, source: rose },
  { number: 6, from: 17, to: 20, source: tradeList },
  { number: 7, from: 14, to: 16, source: rose },
  { number: 8, from: 12, to: 13, source: tradeList },
] as const;

/** The row of the diametral-pitch series that serves a count of teeth, 12 or more. */
export function cutterRow(teeth: number) {
  return diametralSeries.find((row) => teeth >= row.from && (row.to === null || teeth <= row.to));
}
