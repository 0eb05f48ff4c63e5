/** The best few of many by an order, and how many there were; the rest are not kept. */
export class BestFew<T> {
  readonly #most: number;
  readonly #order: (a: T, b: T) => number;
  #kept: T[] = [];
  #worst: T | undefined;
  count = 0;

  constructor(most: number, order: (a: T, b: T) => number) {
    this.#most = most;
    this.#order = order;
  }

  add(one: T): void {
    this.count++;
    if (this.#worst !== undefined && this.#order(one, this.#worst) >= 0) return;
    this.#kept.push(one);
    // Cut down only now and then: sorting at every addition would cost more than it saves.
    if (this.#kept.length >= 4 * this.#most) this.#cut();
  }

  /** The best, in order. */
  get few(): readonly T[] {
    this.#cut();
    return this.#kept;
  }

  #cut(): void {
    this.#kept = this.#kept.sort(this.#order).slice(0, this.#most);
    this.#worst = this.#kept.length === this.#most ? this.#kept.at(-1) : undefined;
  }
}
