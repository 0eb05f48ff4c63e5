/** A place in a file; line and column both count from 1. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** A message to the author of a lesson, kit, course or list, as data; printing is `printDiagnostics`. */
export interface Diagnostic {
  readonly severity: 'error' | 'warning';
  /** Stable id, `area/what`; tests and documentation refer to it. */
  readonly rule: string;
  /** What is wrong; lower case, no full stop. */
  readonly message: string;
  readonly file: string;
  readonly start: Position;
  /** Length of the marked text in characters; 1 when unknown. */
  readonly length?: number;
  /** What to do about it; each a full imperative sentence. */
  readonly hints: readonly string[];
}

/** The content is wrong; carries every diagnostic found. Exit code 1. */
export class ContentError extends Error {
  override readonly name = 'ContentError';
  constructor(
    readonly diagnostics: readonly Diagnostic[],
    /** The text of the files named, so that the faulty line can be shown. */
    readonly sources: ReadonlyMap<string, string> = new Map(),
  ) {
    super(diagnostics.map((d) => `${d.file}:${d.start.line}:${d.start.column}: ${d.message}`).join('\n'));
  }
}

/** Orders by file, then line, then column, so that output is the same whatever was read first; each once. */
export function inOrder(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const once = new Map(diagnostics.map((one) => [JSON.stringify(one), one]));
  return [...once.values()].sort(
    (a, b) =>
      a.file.localeCompare(b.file, 'en') || a.start.line - b.start.line || a.start.column - b.start.column,
  );
}
