/**
 * The kinds of line, after ISO 128-2: width in mm and, where broken, lengths of dash and gap in mm.
 * Nothing is thinner than 0.35 mm but dimension lines: a copy of a copy loses anything finer.
 */
export const strokes = {
  /** Edges that are seen. */
  outline: { width: 0.5, dash: [] },
  /** Edges behind or beside the one that matters. */
  fine: { width: 0.35, dash: [] },
  /** Dimension lines, extension lines, leaders. */
  dimension: { width: 0.25, dash: [] },
  /** Metal cut through. */
  hatch: { width: 0.35, dash: [] },
  /** Chain line: axes and pitch circles. */
  centre: { width: 0.35, dash: [5, 1, 0.8, 1] },
  /** Dashes: edges out of sight. */
  hidden: { width: 0.35, dash: [1.8, 1] },
} as const satisfies Record<string, { readonly width: number; readonly dash: readonly number[] }>;

export type StrokeKind = keyof typeof strokes;

/**
 * Dashes stretched or squeezed so that an open line ends on a dash and a closed one meets its own beginning.
 */
export function fittedDash(kind: StrokeKind, length: number, closed: boolean): readonly number[] {
  const dash: readonly number[] = strokes[kind].dash;
  const [first = 0] = dash;
  const period = dash.reduce((sum, part) => sum + part, 0);
  if (period === 0) return [];
  const tail = closed ? 0 : first;
  const periods = Math.max(1, Math.round((length - tail) / period));
  const stretch = length / (periods * period + tail);
  return dash.map((part) => part * stretch);
}
