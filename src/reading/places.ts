import { type Document, isMap, isScalar, LineCounter } from 'yaml';
import type { Diagnostic } from '../diagnostics/diagnostic.js';

/** A stretch of a file. */
export type Place = Pick<Diagnostic, 'start' | 'length'>;

/** A way into YAML data: keys and list positions. */
export type Path = readonly PropertyKey[];

/** Where each part of a YAML text stands in its file. */
export class Places {
  readonly lines = new LineCounter();
  #document: Document | undefined;

  /**
   * @param text the YAML
   * @param firstLine the line of the file on which it starts
   */
  constructor(
    readonly text: string,
    readonly firstLine: number,
  ) {}

  /** Ties the places to what was parsed. */
  of(document: Document): void {
    this.#document = document;
  }

  /** Where the value at a path stands; what should hold it, when it is missing. */
  value(path: Path): Place {
    return this.#stretch(...this.#range(path));
  }

  /** Where the key at the end of a path stands. */
  key(path: Path): Place {
    const key = path.at(-1);
    const map = this.#node(path.slice(0, -1));
    const pair = isMap(map) ? map.items.find((one) => isScalar(one.key) && one.key.value === key) : undefined;
    const range = isScalar(pair?.key) ? pair.key.range : undefined;
    return range ? this.#stretch(range[0], range[1]) : this.value(path);
  }

  /** Where a piece of text stands inside the value at a path: the first time it does, or the value. */
  within(path: Path, piece: string): Place {
    const [from, to] = this.#range(path);
    const at = this.text.slice(from, to).indexOf(piece);
    return at < 0 || piece === '' ? this.value(path) : this.#stretch(from + at, from + at + piece.length);
  }

  at(offset: number, length = 1): Place {
    return this.#stretch(offset, offset + length);
  }

  #stretch(from: number, to: number): Place {
    const { line, col } = this.lines.linePos(from);
    const end = this.text.indexOf('\n', from);
    const last = end < 0 ? to : Math.min(to, end);
    return {
      start: { line: Math.max(1, line) + this.firstLine - 1, column: Math.max(1, col) },
      length: Math.max(1, Math.min(last - from, 60)),
    };
  }

  #node(path: Path): unknown {
    return path.length === 0 ? this.#document?.contents : this.#document?.getIn(path, true);
  }

  #range(path: Path): [number, number] {
    for (let depth = path.length; depth >= 0; depth--) {
      const range = (this.#node(path.slice(0, depth)) as { range?: [number, number, number] } | null)?.range;
      // A missing value deep down is shown at the start of what should hold it.
      if (range) return depth === path.length ? [range[0], range[1]] : [range[0], range[0] + 1];
    }
    return [0, 1];
  }
}
