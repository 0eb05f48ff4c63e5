import { type Check, workInFull } from '../calculations/work.js';
import { angleInWords } from '../problems/show.js';
import { formatNumber, type UnitSystem } from '../units/format.js';
import { MM_PER_INCH } from '../units/length.js';
import type { Figure } from './sheet.js';
import { byWork } from './sources.js';

type Given = Readonly<Record<string, unknown>>;

/** Where the figures of one sheet are worked, each by both routes; it keeps the sources that agreed. */
export class Desk {
  readonly #sources = new Set<string>();

  constructor(readonly units: UnitSystem) {}

  /** What the sheet's figures were held against and read from, each work once. */
  get sources(): readonly string[] {
    return byWork(this.#sources);
  }

  /** Names where figures were read that no calculation makes, such as the sizes of drills. */
  read(source: string): void {
    this.#sources.add(source);
  }

  /** The unit of lengths, for the head of a column. */
  get lengths(): 'mm' | 'in' {
    return this.units === 'mm' ? 'mm' : 'in';
  }

  /**
   * Works a calculation.
   *
   * @throws {InputError} a value that it refuses; {DisagreementError} two routes that differ
   */
  work(calculation: string, given: Given): Worked {
    const { found, checks } = workInFull(calculation, given);
    for (const { source } of checks) this.#sources.add(source);
    return new Worked({ calculation, given, found, checks }, this.units);
  }
}

interface Work {
  readonly calculation: string;
  readonly given: Given;
  readonly found: Given;
  readonly checks: readonly Check[];
}

/** What a calculation found, and its figures for a table. */
export class Worked {
  constructor(
    readonly work: Work,
    private readonly units: UnitSystem,
  ) {}

  get found(): Given {
    return this.work.found;
  }

  /** A found value, written as the table wants it. */
  figure(find: string, write: (value: unknown) => string): Figure {
    const { calculation, given, found } = this.work;
    return { text: write(found[find]), calculation, given, find, write };
  }

  /** A number in its own unit. */
  number(find: string, places: number): Figure {
    return this.figure(find, (value) => formatNumber(Number(value), places));
  }

  /** A length, mm; on sheets in inches it has a figure more. */
  length(find: string, places = 2): Figure {
    return this.figure(find, (value) => this.lengthOf(value, places));
  }

  /** An angle in degrees, minutes and seconds. */
  angle(find: string, step: 'minute' | 'second' = 'second'): Figure {
    return this.figure(find, (value) => angleInWords(Number(value), step));
  }

  /** A length of a list or a record, as `length` writes it. */
  lengthOf(mm: unknown, places = 2): string {
    return this.units === 'mm'
      ? formatNumber(Number(mm), places)
      : formatNumber(Number(mm) / MM_PER_INCH, places + 1);
  }
}
