import type { Columns } from './learner-columns.js';
import { chosen, PRINT, UNITS } from './learner-values.js';
import type { Row } from './rows.js';

/** A column that goes by another name than it should, and what to call it. */
export interface Stray {
  readonly at: number;
  readonly heading: string;
  readonly means: 'print' | 'units';
}

/**
 * Columns that are not known by their heading but hold nothing except sizes of print, or nothing except units: left
 * out in silence, somebody would not get the large print that they need.
 *
 * @param rows all of the list, headings first
 */
export function straysIn([first, ...rows]: readonly Row[], columns: Columns): Stray[] {
  const known = new Set(Object.values(columns));
  return (first?.cells ?? []).flatMap((heading, at): Stray[] => {
    if (known.has(at)) return [];
    const cells = rows.map((row) => row.cells[at] ?? '').filter((cell) => cell.trim() !== '');
    const holds = (choice: Parameters<typeof chosen>[0]) =>
      cells.length > 0 && cells.every((cell) => chosen(choice, cell) !== undefined);
    if (columns.print === undefined && holds(PRINT)) return [{ at, heading, means: 'print' }];
    return columns.units === undefined && holds(UNITS) ? [{ at, heading, means: 'units' }] : [];
  });
}
