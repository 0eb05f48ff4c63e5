interface Row {
  readonly below: number;
  readonly says: string;
  readonly by?: string;
}

/** What a closing error shows, by its share of the pitch in per cent: common practice, no source. */
const rows: readonly Row[] = [
  { below: 1, says: 'too little to see', by: 'a hair ' },
  { below: 5, says: 'found by measuring' },
  { below: 8, says: 'seen by eye' },
  { below: 50, says: 'felt in mesh' },
  { below: Number.POSITIVE_INFINITY, says: 'plain to see' },
];

/**
 * The verdict on a wheel whose every step is out by so much.
 *
 * @param stepErrorArcSeconds above 0 for a step too long
 */
export function closingVerdict(divisions: number, stepErrorArcSeconds: number): string {
  if (stepErrorArcSeconds === 0) return 'closes exactly';
  // A pitch is 1 296 000″ over the divisions; rounded so that 5 % is 5 % and not a hair less.
  const percent = Math.round((Math.abs(stepErrorArcSeconds) * divisions ** 2 * 1e9) / 12_960) / 1e9;
  const row = rows.find(({ below }) => percent < below);
  // The last tooth has half a pitch less the other steps’ error.
  const left = 1_296_000 - 2 * divisions * (divisions - 1) * stepErrorArcSeconds;
  const last = stepErrorArcSeconds < 0 ? 'fat' : left <= 0 ? 'gone' : 'thin';
  return `${row?.says}: the last tooth is ${row?.by ?? ''}${last}`;
}
