/** Which way a closing error lies, for the reader who meets its sign. */
export function signInWords(closing: number): string {
  if (closing === 0) return 'No error: the last division meets the first cut.';
  return closing > 0
    ? 'Above 0: the steps are too long, and the last division passes the first cut.'
    : 'Below 0: the steps are too short, and the last division falls short of the first cut.';
}
