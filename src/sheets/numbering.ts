/** A figure or formula that has its number. */
export interface Numbered {
  /** `6.1` */
  readonly number: string;
  /** Where a link leads. */
  readonly anchor: string;
  /** `Figure 6.1` */
  readonly said: string;
}

/** The figures and named formulas of one lesson, numbered as they come; what refers to them asks when all are set. */
export class Numbering {
  readonly #chapter: number;
  readonly #anchor: string;
  readonly #labels = new Map<string, Numbered>();
  readonly #figures = new Map<string, Numbered>();
  #figureCount = 0;
  #equationCount = 0;

  /** @param anchor of the lesson, which those of its figures start with */
  constructor(chapter: number, anchor: string) {
    this.#chapter = chapter;
    this.#anchor = anchor;
  }

  /** The next figure. */
  figure(name: string, label?: string): Numbered {
    this.#figureCount += 1;
    const number = `${this.#chapter}.${this.#figureCount}`;
    const figure = {
      number,
      anchor: `${this.#anchor}-figure-${this.#figureCount}`,
      said: `Figure ${number}`,
    };
    if (!this.#figures.has(name)) this.#figures.set(name, figure);
    if (label !== undefined) this.#labels.set(label, figure);
    return figure;
  }

  /** The next formula with a name. */
  equation(label: string): Numbered {
    this.#equationCount += 1;
    const number = `${this.#chapter}.${this.#equationCount}`;
    const equation = {
      number,
      anchor: `${this.#anchor}-equation-${this.#equationCount}`,
      said: `Equation ${number}`,
    };
    this.#labels.set(label, equation);
    return equation;
  }

  /** What a reference leads to: what bears that label, or the figure of that name; undefined for neither. */
  find(to: string): Numbered | undefined {
    return this.#labels.get(to) ?? this.#figures.get(to);
  }
}
