/**
 * What a main scale and a vernier or thimble read together, in the unit of the division.
 *
 * @param divisions of the main scale that are passed
 * @param line the one that tells, of all the lines that share one division
 */
export const readingOf = (divisions: number, division: number, line: number, lines: number): number =>
  divisions * division + line * (division / lines);
