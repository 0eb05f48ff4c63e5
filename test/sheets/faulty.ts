import { ContentError, type Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { printDiagnostics } from '../../src/diagnostics/print.js';

/** What a piece of work complains of. */
export function complaints(work: () => unknown): readonly Diagnostic[] {
  return caught(work).diagnostics;
}

/** The same as its author reads it. */
export function printed(work: () => unknown): string {
  const { diagnostics, sources } = caught(work);
  return printDiagnostics(diagnostics, sources);
}

function caught(work: () => unknown): ContentError {
  try {
    work();
  } catch (error) {
    if (error instanceof ContentError) return error;
    throw error;
  }
  throw new Error('nothing was found wrong');
}
