import type { Path } from '../reading/places.js';

/** A declaration in a lesson that cannot be worked, with the place in it; the lesson turns it into a message. */
export class Fault extends Error {
  override readonly name = 'Fault';

  /**
   * @param path from the declaration that was being worked
   * @param piece the text to point at, when it is a part of the value there
   */
  constructor(
    message: string,
    readonly path: Path,
    readonly piece = '',
    readonly hints: readonly string[] = [],
    readonly rule = 'problem',
  ) {
    super(message);
  }

  /** The same fault seen from further out. */
  under(path: Path): Fault {
    return new Fault(this.message, [...path, ...this.path], this.piece, this.hints, this.rule);
  }
}

/** Runs a piece of work; a fault in it is placed, and so is whatever a value was refused for. */
export function placed<T>(path: Path, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof Fault) throw error.under(path);
    throw error;
  }
}
