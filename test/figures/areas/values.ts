/** For each figure of an area: the class's own values, and values at the ends of what it is given. */
export type FigureValues = Readonly<
  Record<
    string,
    { readonly typical: Record<string, unknown>; readonly sweep: readonly Record<string, unknown>[] }
  >
>;
