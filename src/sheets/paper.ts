import type { SheetStyle } from './model.js';

/** A paper as it lies: its name as CSS has it, and its size in mm. */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

const PAPERS = {
  a4: { name: 'A4', short: 210, long: 297 },
  letter: { name: 'letter', short: 215.9, long: 279.4 },
} as const;

/** A paper, upright or turned on its side. */
export function paperOf(paper: SheetStyle['paper'], turned = false): Paper {
  const { name, short, long } = PAPERS[paper];
  return turned
    ? { name: `${name} landscape`, width: long, height: short }
    : { name, width: short, height: long };
}
