import { elementsOf, type Node, named, textOf } from './xml-reader.js';

type Value = number | string | boolean | null;

/** What an item says of some answers. */
export interface Outcome {
  readonly score: number;
  readonly outcomes: Readonly<Record<string, Value>>;
  /** The words of each feedback that is shown. */
  readonly feedback: readonly string[];
}

/**
 * Carries out the response processing of an item, by the meaning that the standard gives each of the expressions
 * that our items use.
 *
 * @param responses what was written, by response; a choice by its identifier, several in order with commas between
 * @throws {Error} for an expression that is not known here, or a variable that is not declared
 */
export function respond(item: Node, responses: Readonly<Record<string, string>>): Outcome {
  const declared = new Map(
    named(item, 'qti-response-declaration').map((one) => [one.attributes.identifier, one]),
  );
  const outcomes: Record<string, Value> = {};
  for (const one of named(item, 'qti-outcome-declaration')) {
    const [start] = named(one, 'qti-value');
    outcomes[one.attributes.identifier ?? ''] = start ? Number(textOf(start)) : null;
  }
  const processor = new Processor(declared, outcomes, responses);
  for (const rule of elements(one(item, 'qti-response-processing'))) processor.rule(rule);
  const feedback = named(item, 'qti-modal-feedback')
    .filter(({ attributes }) => outcomes[attributes['outcome-identifier'] ?? ''] === attributes.identifier)
    .map((shown) =>
      [...elementsOf(shown)]
        .filter(({ name }) => name === 'p')
        .map(textOf)
        .join('\n'),
    );
  return { score: Number(outcomes.SCORE), outcomes, feedback };
}

/** The answers that an item itself declares to be right. */
export function correctResponses(item: Node): Record<string, string> {
  return Object.fromEntries(
    named(item, 'qti-response-declaration').map((declaration) => [
      declaration.attributes.identifier ?? '',
      named(one(declaration, 'qti-correct-response'), 'qti-value').map(textOf).join(','),
    ]),
  );
}

class Processor {
  constructor(
    readonly declared: ReadonlyMap<string | undefined, Node>,
    readonly outcomes: Record<string, Value>,
    readonly responses: Readonly<Record<string, string>>,
  ) {}

  rule(node: Node): void {
    if (node.name === 'qti-set-outcome-value') {
      const identifier = node.attributes.identifier ?? '';
      if (!(identifier in this.outcomes)) throw new Error(`${identifier} is not declared`);
      this.outcomes[identifier] = this.value(elements(node)[0] as Node);
      return;
    }
    if (node.name !== 'qti-response-condition') throw new Error(`no rule is called ${node.name}`);
    for (const branch of elements(node)) {
      const [condition, ...rules] = elements(branch);
      const otherwise = branch.name === 'qti-response-else';
      if (!otherwise && this.value(condition as Node) !== true) continue;
      for (const rule of otherwise ? elements(branch) : rules) this.rule(rule);
      return;
    }
  }

  value(node: Node): Value {
    const { attributes } = node;
    const of = elements(node).map((child) => this.value(child));
    const numbers = () => of as number[];
    if (of.includes(null) && node.name !== 'qti-or' && node.name !== 'qti-and') return null;
    switch (node.name) {
      case 'qti-variable':
        return this.#variable(attributes.identifier ?? '');
      case 'qti-correct':
        return named(this.#declaration(attributes.identifier ?? ''), 'qti-value')
          .map(textOf)
          .join(',');
      case 'qti-ordered':
        return of.join(',');
      case 'qti-base-value':
        return attributes['base-type'] === 'float' ? Number(textOf(node)) : textOf(node);
      case 'qti-and':
        return of.every((value) => value === true);
      case 'qti-or':
        return of.some((value) => value === true);
      case 'qti-match':
        return of[0] === of[1];
      case 'qti-gt':
        return (of[0] as number) > (of[1] as number);
      case 'qti-sum':
        return numbers().reduce((sum, value) => sum + value, 0);
      case 'qti-subtract':
        return (of[0] as number) - (of[1] as number);
      case 'qti-divide':
        return (of[0] as number) / (of[1] as number);
      case 'qti-equal':
        return equal(of[0] as number, of[1] as number, attributes);
      case 'qti-pattern-match':
        return new RegExp(`^(?:${attributes.pattern})$`, 'u').test(String(of[0]));
      case 'qti-map-response':
        return this.#mapped(attributes.identifier ?? '');
      default:
        throw new Error(`no expression is called ${node.name}`);
    }
  }

  #declaration(identifier: string): Node {
    const found = this.declared.get(identifier);
    if (!found) throw new Error(`${identifier} is not declared`);
    return found;
  }

  #variable(identifier: string): Value {
    if (identifier in this.outcomes) return this.outcomes[identifier] ?? null;
    const text = this.responses[identifier];
    if (this.#declaration(identifier).attributes['base-type'] !== 'float') return text ?? null;
    const number = Number(text);
    return text === undefined || text.trim() === '' || Number.isNaN(number) ? null : number;
  }

  #mapped(identifier: string): Value {
    const [mapping] = named(this.#declaration(identifier), 'qti-mapping');
    const typed = this.responses[identifier]?.toLowerCase();
    const entry = named(mapping as Node, 'qti-map-entry').find(
      ({ attributes }) =>
        attributes['case-sensitive'] === 'false' && attributes['map-key']?.toLowerCase() === typed,
    );
    return Number((entry ?? mapping)?.attributes[entry ? 'mapped-value' : 'default-value']);
  }
}

function equal(value: number, response: number, attributes: Node['attributes']): boolean {
  if (attributes['tolerance-mode'] !== 'absolute') throw new Error('only absolute tolerances are known here');
  const [down = 0, up = down] = (attributes.tolerance ?? '').split(' ').map(Number);
  const [low, high] = [value - down, value + up];
  return (
    (attributes['include-lower-bound'] === 'true' ? response >= low : response > low) &&
    (attributes['include-upper-bound'] === 'true' ? response <= high : response < high)
  );
}

const elements = (node: Node): Node[] => node.children.filter((child) => typeof child !== 'string') as Node[];

function one(node: Node, name: string): Node {
  const [found] = named(node, name);
  if (!found) throw new Error(`${node.name} has no ${name}`);
  return found;
}
