import { ContentError, type Diagnostic, type Position } from '../diagnostics/diagnostic.js';

/** A text that an author wrote, and where it stands in its file. */
export interface Written {
  readonly file: string;
  readonly text: string;
  /** Line of the file on which the text starts; none when that is not known. */
  readonly line: number | undefined;
  /** What it is, when the place is not known: `problem centres`. */
  readonly about: string;
}

/** After so many, most of them told already, nothing more is looked for. */
const MOST = 1000;

/** All that is wrong with the texts of a document, gathered before anything is said. */
export class Faults {
  readonly #found = new Map<string, Diagnostic>();
  readonly #sources = new Map<string, string>();
  #told = 0;

  /**
   * @param offset where in the text, from 0
   * @throws {ContentError} when there is no end of them
   */
  add(rule: string, written: Written, offset: number, length: number, message: string, hint: string): void {
    if (++this.#told > MOST) this.demandNone();
    const { file, text, line, about } = written;
    const before = text.slice(0, Math.max(0, offset)).split('\n');
    const start: Position =
      line === undefined
        ? { line: 1, column: 1 }
        : { line: line + before.length - 1, column: (before.at(-1)?.length ?? 0) + 1 };
    const fault: Diagnostic = {
      severity: 'error',
      rule: `sheet/${rule}`,
      message: line === undefined ? `${about}: ${message}` : message,
      file,
      start,
      ...(line === undefined ? {} : { length: Math.max(1, length) }),
      hints: [hint],
    };
    // One formula may stand on every learner's sheet.
    this.#found.set(`${file}:${start.line}:${start.column}:${fault.message}`, fault);
    if (line !== undefined) this.#sources.set(file, '\n'.repeat(line - 1) + text);
  }

  /** @throws {ContentError} with all that was found, if anything was */
  demandNone(): void {
    if (this.#found.size > 0) throw new ContentError([...this.#found.values()], this.#sources);
  }
}

/** Where a line and column, both as a syntax tree counts them (lines from 1, columns from 0), stand in a text. */
export function offsetOf(text: string, at: { readonly line: number; readonly column: number }): number {
  let start = 0;
  for (let line = 1; line < at.line; line++) start = text.indexOf('\n', start) + 1;
  return start + at.column;
}
