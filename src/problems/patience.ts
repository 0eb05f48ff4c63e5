import { Fault } from './fault.js';

interface Machine {
  readonly process?: { cpuUsage?(): { readonly user: number; readonly system: number } };
}

/** Seconds that the processor has worked for this program; a page, which draws what was drawn before, has no such clock. */
function worked(): number {
  const used = (globalThis as Machine).process?.cpuUsage?.();
  return used ? (used.user + used.system) / 1e6 : 0;
}

/** In milliseconds. */
const AT_ONCE = 10;

/**
 * An end to work that a lesson may ask for without end. What the processor did counts, not the clock on the wall: a
 * slow day is nobody's fault.
 */
export class Patience {
  readonly #began = performance.now();
  /** What the processor had worked before: asked for only when it is not over at once, since asking is slow. */
  #before: number | undefined;

  /**
   * @param seconds of the processor's work; a lesson that comes with Benchleaf takes a quarter of one
   * @param what takes them, for the message
   */
  constructor(
    readonly seconds: number,
    readonly what: string,
  ) {}

  /** @throws {Fault} when it is at an end */
  demand(): void {
    const passed = performance.now() - this.#began;
    if (passed < AT_ONCE) return;
    this.#before ??= worked();
    if (passed <= 1000 * this.seconds || worked() - this.#before <= this.seconds) return;
    throw new Fault(
      `${this.what} takes longer than ${this.seconds} seconds of work`,
      [],
      '',
      ['Give its searches narrower ranges, or let keep refuse fewer numbers.'],
      'problem/too-long',
    );
  }
}
