import { ReportedError } from '../diagnostics/errors.js';

/** A document that must not be handed out: something in it could not be read, drawn or set. */
export class PrintError extends ReportedError {
  override readonly name = 'PrintError';

  /**
   * @param problems what went wrong, each for a reader, never empty
   * @param what the document, as the reader knows it
   */
  constructor(
    readonly problems: readonly string[],
    what = 'the page',
  ) {
    super(`${what} cannot be printed: ${problems.join('; ')}`, 1);
  }
}
