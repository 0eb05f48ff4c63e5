import { nearest } from '../diagnostics/suggest.js';
import { evaluateFormula, FormulaError, FUNCTIONS, NoValueError, rightSide } from '../formula/formula.js';
import { Fault } from './fault.js';

/** A name in a formula: `teeth`, `wheel.depthOfCut`, `settings.0.holes`, `d_a`. */
const NAME = /[A-Za-z_]\w*(?:\.\w+)*/g;
const NOT_NAMES = new Set([...FUNCTIONS, 'pi', 'and', 'not']);

interface Prepared {
  /** The formula's right-hand side with every name replaced by a plain one. */
  readonly text: string;
  readonly names: readonly string[];
}

const prepared = new Map<string, Prepared>();

function prepare(formula: string): Prepared {
  const known = prepared.get(formula);
  if (known) return known;
  const names: string[] = [];
  const text = renamed(rightSide(formula), (name) => {
    if (!names.includes(name)) names.push(name);
    return `v${names.indexOf(name)}`;
  });
  const result = { text, names };
  prepared.set(formula, result);
  return result;
}

const paths = new Map<string, readonly string[]>();

function keysOf(name: string): readonly string[] {
  let keys = paths.get(name);
  if (!keys) {
    keys = name.split('.');
    paths.set(name, keys);
  }
  return keys;
}

/** What a declaration may name: values by name, and numbers by the symbols of its calculations. */
export class Names {
  constructor(
    readonly values: Readonly<Record<string, unknown>>,
    readonly symbols: Readonly<Record<string, number>> = {},
    /** Workings that have no value this time, such as the spaces of a count that is not possible. */
    readonly absent: ReadonlySet<string> = new Set(),
  ) {}

  /** The value of a name, or undefined. */
  find(name: string): unknown {
    let value: unknown = this.values;
    for (const key of keysOf(name)) {
      if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) {
        value = undefined;
        break;
      }
      value = (value as Record<string, unknown>)[key];
    }
    return value ?? (Object.hasOwn(this.symbols, name) ? this.symbols[name] : undefined);
  }

  /** @throws {Fault} when there is no such name; {NoValueError} when a list has no such place this time */
  get(name: string): unknown {
    const value = this.find(name);
    if (value !== undefined) return value;
    if (this.absent.has(name.split('.')[0] ?? '')) throw new NoValueError(`${name} has no value this time`);
    const list = /^(?<list>.+?)\.\d/.exec(name)?.groups?.list;
    if (list !== undefined && Array.isArray(this.find(list)))
      throw new NoValueError(`${list} has not so many entries`);
    const near = nearest(name, this.#known());
    throw new Fault(`there is no value called ${name} here`, [], name, [
      near ? `Did you mean ${near}?` : `Known here: ${this.#known().slice(0, 12).join(', ')}.`,
    ]);
  }

  /** @throws {Fault} when the name is unknown or no number */
  number(name: string): number {
    const value = this.get(name);
    if (typeof value === 'number') return value;
    throw new Fault(`${name} is not a number`, [], name);
  }

  /**
   * The number a formula comes to.
   *
   * @throws {Fault} for an unknown name or a formula that is no arithmetic; {NoValueError} for no finite number
   */
  evaluate(formula: string): number {
    const { text, names } = prepare(formula);
    const scope: Record<string, number> = {};
    names.forEach((name, place) => {
      scope[`v${place}`] = this.number(name);
    });
    try {
      return evaluateFormula(text, scope);
    } catch (error) {
      if (!(error instanceof FormulaError)) throw error;
      const message = error.message.replace(/\bv(\d+)\b/g, (_, place) => names[Number(place)] ?? '');
      if (error instanceof NoValueError) throw new NoValueError(message);
      throw new Fault(message, [], formula);
    }
  }

  /** The same with some names standing for other numbers. */
  with(numbers: ReadonlyMap<string, number>): Names {
    return new (class extends Names {
      override find(name: string): unknown {
        return numbers.get(name) ?? super.find(name);
      }
    })(this.values, this.symbols, this.absent);
  }

  #known(): string[] {
    return Object.entries(this.values).flatMap(([name, value]) =>
      typeof value === 'object' && value !== null && !Array.isArray(value)
        ? [name, ...Object.keys(value).map((key) => `${name}.${key}`)]
        : [name],
    );
  }
}

/** A formula or relation with each name in it said otherwise. */
export function renamed(formula: string, say: (name: string) => string): string {
  return formula.replace(NAME, (name) => (NOT_NAMES.has(name) ? name : say(name)));
}

const used = new Map<string, readonly string[]>();

/** The names a formula or relation uses, each once. */
export function namesIn(formula: string): readonly string[] {
  const known = used.get(formula);
  if (known) return known;
  const names = new Set<string>();
  renamed(formula, (name) => {
    names.add(name);
    return name;
  });
  used.set(formula, [...names]);
  return [...names];
}
