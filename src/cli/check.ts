import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { printDiagnostics } from '../diagnostics/print.js';
import { kitText } from '../kit/open.js';
import { readKit } from '../kit/read.js';

/**
 * Checks kit files, all of them before anything is said.
 *
 * @returns the printed diagnostics, or undefined when all is in order
 * @throws {CommandError} when a file is not there
 */
export function checkKits(files: readonly string[]): string | undefined {
  const sources = new Map<string, string>();
  const faults: Diagnostic[] = [];
  for (const file of files) {
    try {
      const text = kitText(file);
      sources.set(file, text);
      readKit(text, file);
    } catch (error) {
      if (!(error instanceof ContentError)) throw error;
      faults.push(...error.diagnostics);
    }
  }
  return faults.length > 0 ? printDiagnostics(faults, sources) : undefined;
}
