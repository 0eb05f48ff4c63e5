/** The same reading counted in its smallest parts, all of them, as if the main scale were divided so finely. */
export const countedInParts = (divisions: number, division: number, line: number, lines: number): number =>
  ((divisions * lines + line) * division) / lines;
