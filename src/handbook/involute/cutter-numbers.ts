/**
 * Teeth that each of the eight involute cutters serves, in the diametral-pitch series.
 * J. Rose, Modern Machine-Shop Practice (1887), pp. 71-74, read for Nos. 1, 2, 3, 5 and 7; Nos. 4 and 6 fill the gaps.
 * Rose prints No. 8 as 12 to 14, though 14 already belongs to No. 7; the trade list has 12 to 13, which is followed.
 */
export const diametralSeries = [
  { number: 1, from: 135, to: null },
  { number: 2, from: 55, to: 134 },
  { number: 3, from: 35, to: 54 },
  { number: 4, from: 26, to: 34 },
  { number: 5, from: 21, to: 25 },
  { number: 6, from: 17, to: 20 },
  { number: 7, from: 14, to: 16 },
  { number: 8, from: 12, to: 13 },
] as const;

/** The row of the diametral-pitch series that serves a count of teeth, 12 or more. */
export function cutterRow(teeth: number) {
  return diametralSeries.find((row) => teeth >= row.from && (row.to === null || teeth <= row.to));
}
