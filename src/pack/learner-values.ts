import type { SheetStyle } from '../sheets/model.js';
import type { UnitSystem } from '../units/format.js';

/** A cell that holds one of a few things, each under any of its names. */
export interface Choice<T extends string> {
  /** What the cell tells, for a message. */
  readonly what: string;
  readonly names: Readonly<Record<T, readonly string[]>>;
}

export const PRINT: Choice<SheetStyle['print']> = {
  what: 'size of print',
  names: {
    plain: ['plain', 'normal', 'ordinary', 'standard', 'regular'],
    large: ['large', 'big', '18 pt', '18pt', '18 point'],
  },
};

export const UNITS: Choice<UnitSystem> = {
  what: 'system of units',
  names: {
    mm: ['mm', 'metric', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
    inch: ['inch', 'inches', 'in', 'imperial', '"', '″'],
  },
};

/** What a cell means, in either case, with or without the word print; undefined for anything else. */
export function chosen<T extends string>({ names }: Choice<T>, cell: string): T | undefined {
  const word = cell
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/ print$/, '');
  const found = Object.entries<readonly string[]>(names).find(([, known]) => known.includes(word));
  return found?.[0] as T | undefined;
}

/** What may stand in a cell, for a hint. */
export function allowed<T extends string>({ names }: Choice<T>): string {
  return `Write ${Object.keys(names).join(' or ')}, or leave it empty for what the class has.`;
}
