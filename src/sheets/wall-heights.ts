import type { SheetStyle } from './model.js';
import { textWidth } from './text-width.js';

/** The page that a sheet for the wall has, mm. */
export interface Room {
  readonly print: SheetStyle['print'];
  readonly width: number;
  readonly height: number;
}

const POINT = 25.4 / 72;

/**
 * Heights of what stands on a page, mm, as `reference.css` comes out: enough to tell where a page will end. A line of
 * text or of a head, its letters, and what stands beside its lines.
 */
const SIZES = {
  plain: {
    title: 14.8,
    text: { line: 5.8, size: 11.5 * POINT, beside: 0.8 },
    machine: { line: 6, size: 12 * POINT, beside: 1.3 },
    small: { line: 5.05, size: 10 * POINT, beside: 0.8 },
    heading: 9.3,
    headBeside: 0.9,
    row: 7.1,
    rules: 0.7,
    tableLine: 6.5,
    gap: 4,
    box: { sides: 9.4, beside: 6.4 },
  },
  large: {
    title: 18,
    text: { line: 9.1, size: 18 * POINT, beside: 1.1 },
    machine: { line: 9.5, size: 19 * POINT, beside: 1.8 },
    small: { line: 8.07, size: 16 * POINT, beside: 1.1 },
    heading: 14.3,
    headBeside: 1.1,
    row: 9.9,
    rules: 0.7,
    tableLine: 9.1,
    gap: 5.6,
    box: { sides: 12.6, beside: 8.4 },
  },
} as const;

/** A browser breaks lines at words, and so fills them less; narrow ones still less. */
const NARROW = 120;
const filled = (width: number): number => (width < NARROW ? 0.96 : 0.985);

/** The heights for a page, by its size of print. */
export class WallHeights {
  private readonly sizes: (typeof SIZES)['plain' | 'large'];

  constructor(private readonly room: Room) {
    this.sizes = SIZES[room.print];
  }

  /** How high a page is, and the room under a table. */
  get page(): number {
    return this.room.height;
  }

  /** How many rows a page has room for under usual heads. */
  get rows(): number {
    return (this.page - this.heads(3)) / this.row();
  }

  get gap(): number {
    return this.sizes.gap;
  }

  private block(kind: 'text' | 'machine' | 'small', words: string, width = this.room.width): number {
    if (words === '') return 0;
    const { line, size, beside } = this.sizes[kind];
    return Math.ceil(textWidth(words, size) / (filled(width) * width)) * line + beside;
  }

  /** Title, machine and conventions. */
  opening(machine: string, conventions: readonly string[]): number {
    const told = conventions.reduce((sum, words) => sum + this.block('text', words), 0);
    return this.sizes.title + this.block('machine', machine) + told + this.sizes.gap;
  }

  /** What stands above the rows of a table: on its first page its title and note, on every page its heads. */
  above(table: { readonly title: string; readonly note: string }): number {
    return (table.title === '' ? 0 : this.sizes.heading) + this.block('text', table.note);
  }

  heads(lines: number): number {
    return lines * this.sizes.small.line + this.sizes.headBeside;
  }

  row(lines = 1): number {
    return this.sizes.row + (lines - 1) * this.sizes.tableLine;
  }

  /** What a strong row is higher for its rules. */
  get strong(): number {
    return this.sizes.rules;
  }

  /** What stands at the end. */
  colophon(sources: string, cautions: readonly string[], beside: boolean): number {
    const { box, small } = this.sizes;
    const [left, right] = beside
      ? [((this.room.width - 8) * 2) / 5, ((this.room.width - 8) * 3) / 5]
      : [this.room.width, this.room.width];
    const proof = this.block('small', `Checked against ${sources}`, left) + small.line + small.beside;
    const lines = cautions.reduce(
      (sum, words) => sum + this.block('small', words, right - box.sides) - small.beside,
      0,
    );
    const caution = lines + box.beside;
    return beside ? Math.max(proof, caution) : proof + caution;
  }
}
