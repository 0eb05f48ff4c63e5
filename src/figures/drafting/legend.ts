import type { Pen } from '../pen.js';
import type { Point } from './point.js';

/** A letter used in the drawing, what it stands for, and its value as printed. */
export interface LegendRow {
  readonly letter: string;
  readonly meaning: string;
  readonly value: string;
}

/** Lists the letters of a drawing under it: letter, meaning and value in three columns from a top left corner. */
export function legend(pen: Pen, at: Point, rows: readonly LegendRow[]): void {
  const size = pen.style.labelSize;
  const widest = (pick: (row: LegendRow) => string): number =>
    Math.max(...rows.map((row) => pen.textSize(pick(row)).width));
  const meaning = at.x + widest((row) => row.letter) + size;
  const value = meaning + widest((row) => row.meaning) + size + widest((row) => row.value);
  for (const [i, row] of rows.entries()) {
    const y = at.y + i * 1.4 * size;
    pen.text(row.letter, { x: at.x, y }, { anchor: 'start', sit: 'below', weight: 600 });
    pen.text(row.meaning, { x: meaning, y }, { anchor: 'start', sit: 'below' });
    if (row.value !== '') pen.text(row.value, { x: value, y }, { anchor: 'end', sit: 'below' });
  }
}
