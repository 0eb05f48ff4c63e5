import Handlebars from 'handlebars';
import { nearest } from '../diagnostics/suggest.js';
import { figures } from '../figures/index.js';
import { crowdedBraces } from './crowded.js';
import { helperShapes } from './helpers.js';
import { checkReferences, equationsIn, type Labelled, type Reference } from './references.js';
import type { Vocabulary } from './vocabulary.js';

/** Something wrong in a text with `{{…}}`. */
export interface TemplateFault {
  readonly rule: string;
  readonly message: string;
  /** From 1, in the text. */
  readonly line: number;
  /** From 1. */
  readonly column: number;
  readonly length: number;
  readonly hints: readonly string[];
}

/** What was found in a text: its faults, and the workings it asks to be set out. */
export interface TemplateFindings {
  readonly faults: readonly TemplateFault[];
  readonly worked: readonly WorkedBlock[];
}

/** A working that a text asks to be set out, and where it asks. */
export interface WorkedBlock extends Pick<TemplateFault, 'line' | 'column' | 'length'> {
  readonly name: string;
  /** The found values that it is about, with commas between; empty for all. */
  readonly show: string;
}

type Node = hbs.AST.Node;
type Path = hbs.AST.PathExpression;

const CONDITIONS = new Set(['if', 'unless']);

/** A lesson's body may set out workings and call for its problems; the words of a problem may have figures. */
export type LessonPart = 'body' | 'problem';

/** Checks every name and helper of a text before anything is put in. */
export function checkTemplate(text: string, known: Vocabulary, part: LessonPart): TemplateFindings {
  const crowded = crowdedBraces(text);
  if (crowded) return { faults: [crowded], worked: [] };
  const faults: TemplateFault[] = [...bracesInMaths(text)];
  let tree: hbs.AST.Program;
  try {
    tree = Handlebars.parse(text);
  } catch (error) {
    return { faults: [...faults, syntaxFault(error as Error, text)], worked: [] };
  }
  const checker = new Checker(text.split('\n'), known, part, faults);
  checker.accept(tree);
  faults.push(...checkReferences([...checker.figures, ...equationsIn(text)], checker.references));
  return { faults, worked: checker.worked };
}

class Checker extends Handlebars.Visitor {
  readonly worked: WorkedBlock[] = [];
  readonly figures: Labelled[] = [];
  readonly references: Reference[] = [];
  constructor(
    readonly lines: readonly string[],
    readonly known: Vocabulary,
    readonly part: LessonPart,
    readonly faults: TemplateFault[],
  ) {
    super();
  }

  override MustacheStatement(statement: hbs.AST.MustacheStatement): void {
    const { params, hash } = statement;
    const path = statement.path as Path;
    if (!statement.escaped)
      this.#say(statement, 'braces', 'three braces are one too many', ['Write {{ and }}.']);
    if (path.type !== 'PathExpression')
      return this.#say(statement, 'braces', 'expected a name in the braces');
    const shape = Object.hasOwn(helperShapes, path.original) ? helperShapes[path.original] : undefined;
    if (!shape) {
      if (params.length > 0 || (hash?.pairs.length ?? 0) > 0) return this.#unknownHelper(path);
      return this.#name(path);
    }
    this.#shape(statement, path.original);
    if (shape.block) this.#block(statement, path.original);
    else if (path.original === 'ref') this.#reference(statement);
    else for (const param of params) this.#value(param);
    for (const pair of hash?.pairs ?? []) this.#value(pair.value);
  }

  override BlockStatement(statement: hbs.AST.BlockStatement): void {
    const path = statement.path as Path;
    if (!CONDITIONS.has(path.original)) this.#unknownHelper(path);
    else if (path.type !== 'PathExpression') this.#say(path, 'braces', 'expected if or unless after the #');
    else if (statement.params.length !== 1 || (statement.hash?.pairs.length ?? 0) > 0)
      this.#say(path, 'helper', `{{#${path.original}}} takes one value`, [
        'Write {{#if indexing.possible}}.',
      ]);
    else this.#value(statement.params[0] as Node);
    this.acceptKey(statement, 'program');
    this.acceptKey(statement, 'inverse');
  }

  override PartialStatement(statement: hbs.AST.PartialStatement): void {
    this.#say(statement, 'helper', 'a lesson cannot take in other files');
  }

  override PartialBlockStatement(statement: hbs.AST.PartialBlockStatement): void {
    this.#say(statement, 'helper', 'a lesson cannot take in other files');
  }

  override Decorator(statement: hbs.AST.Decorator): void {
    this.#say(statement, 'helper', 'a lesson cannot define pieces of its own');
  }

  override DecoratorBlock(statement: hbs.AST.DecoratorBlock): void {
    this.#say(statement, 'helper', 'a lesson cannot define pieces of its own');
  }

  #shape({ params, hash, loc }: hbs.AST.MustacheStatement, name: string): void {
    const shape = helperShapes[name];
    if (!shape) return;
    const hint = [`Write for instance ${shape.example}.`];
    if (params.length !== shape.values) {
      const wanted = shape.values === 0 ? 'nothing' : 'one value';
      this.#say({ loc } as Node, 'helper', `${name} takes ${wanted} after its name`, hint);
    }
    for (const pair of hash?.pairs ?? [])
      if (shape.options !== 'any' && !shape.options.includes(pair.key))
        this.#say(pair, 'helper', `${name} has no ${pair.key}`, hint);
  }

  #block(statement: hbs.AST.MustacheStatement, name: string): void {
    if (this.part === 'problem' && name !== 'figure')
      return this.#say(statement, 'helper', `${name} cannot stand in the words of a problem`);
    const alone = (this.lines[statement.loc.start.line - 1] ?? '').trim();
    const ends = (this.lines[statement.loc.end.line - 1] ?? '').trim();
    if (!alone.startsWith('{{') || !ends.endsWith('}}') || alone.indexOf('}}') < alone.lastIndexOf('{{'))
      this.#say(statement, 'helper', `{{${name}}} stands on a line of its own`, [
        'Put it on a line by itself, with an empty line before and after.',
      ]);
    const [first] = statement.params as hbs.AST.StringLiteral[];
    if (!first) return;
    if (first.type !== 'StringLiteral')
      return this.#say(first, 'helper', `${name} takes a name in quotation marks`, [
        `Write for instance ${helperShapes[name]?.example}.`,
      ]);
    if (name === 'worked')
      this.worked.push({
        name: first.value,
        show: showOf(statement),
        ...placeOf(first),
      });
    if (name === 'figure') this.#figure(statement, first);
  }

  /** A reference inside a text; what it leads to may come after it. */
  #reference(statement: hbs.AST.MustacheStatement): void {
    if (this.part === 'problem')
      return this.#say(statement, 'helper', 'ref cannot stand in the words of a problem', [
        'What a problem shows has no number.',
      ]);
    const [to] = statement.params as hbs.AST.StringLiteral[];
    if (!to) return;
    if (to.type !== 'StringLiteral')
      return this.#say(to, 'helper', 'ref takes a name in quotation marks', [
        `Write for instance ${helperShapes.ref?.example}.`,
      ]);
    this.references.push({ to: to.value, ...placeOf(to) });
  }

  #figure({ hash }: hbs.AST.MustacheStatement, name: hbs.AST.StringLiteral): void {
    const figure = figures.get(name.value);
    if (!figure)
      return this.#say(name, 'figure', `there is no figure called ${JSON.stringify(name.value)}`, [
        suggestion(name.value, [...figures.keys()]) ?? 'See benchleaf list figures.',
      ]);
    if (this.part === 'body') this.figures.push({ label: name.value, own: false, ...placeOf(name) });
    const label = hash?.pairs.find(({ key }) => key === 'label')?.value as hbs.AST.StringLiteral | undefined;
    if (label?.type === 'StringLiteral')
      this.figures.push({ label: label.value, own: true, ...placeOf(label) });
    else if (label)
      this.#say(label, 'figure', 'label takes a name in quotation marks', ['Write label="blank".']);
    const takes = [...Object.keys(figure.given.shape), 'caption', ...(this.part === 'body' ? ['label'] : [])];
    for (const pair of hash?.pairs ?? [])
      if (!takes.includes(pair.key))
        this.#say(pair, 'figure', `the figure ${name.value} has no ${pair.key}`, [
          suggestion(pair.key, takes) ?? `It takes ${takes.join(', ')}.`,
        ]);
  }

  #value(node: Node): void {
    if (node.type === 'PathExpression') this.#name(node as Path);
    else if (node.type === 'SubExpression')
      this.#say(node, 'helper', 'brackets are not used in the braces of a lesson');
  }

  #name(path: Path): void {
    const [head = '', next] = path.original.split('.');
    const keys = this.known.get(head);
    if (!keys || path.data || path.depth > 0 || path.original.startsWith('this'))
      return this.#say(path, 'name', `there is no value called ${path.original} here`, [
        suggestion(head, [...this.known.keys(), ...Object.keys(helperShapes)]) ??
          `Known here: ${[...this.known.keys()].join(', ') || 'nothing'}.`,
      ]);
    // A list's own places, as in settings.0.holes, are looked at when there is a list.
    if (next === undefined || keys.has(next) || (keys.size === 0 && /^\d+$/.test(next))) return;
    this.#say(path, 'name', `${head} has no ${next}`, [
      suggestion(next, [...keys]) ??
        (keys.size > 0 ? `It has ${[...keys].join(', ')}.` : `Write {{${head}}}.`),
    ]);
  }

  #unknownHelper(path: Path): void {
    this.#say(path, 'name', `there is no helper called ${path.original}`, [
      suggestion(path.original, Object.keys(helperShapes)) ??
        `There are ${Object.keys(helperShapes).join(', ')}, if and unless.`,
    ]);
  }

  #say({ loc }: Node, rule: string, message: string, hints: readonly string[] = []): void {
    const { start, end } = loc;
    const length = start.line === end.line ? Math.max(1, end.column - start.column) : 1;
    this.faults.push({ rule, message, line: start.line, column: start.column + 1, length, hints });
  }
}

/** Where a name in quotation marks stands. */
function placeOf({ loc, value }: hbs.AST.StringLiteral): Pick<WorkedBlock, 'line' | 'column' | 'length'> {
  return { line: loc.start.line, column: loc.start.column + 1, length: String(value).length + 2 };
}

function showOf({ hash }: hbs.AST.MustacheStatement): string {
  const value = hash?.pairs.find(({ key }) => key === 'show')?.value as hbs.AST.StringLiteral | undefined;
  return value?.type === 'StringLiteral' ? value.value : '';
}

function suggestion(typed: string, known: readonly string[]): string | undefined {
  const near = nearest(typed, known);
  return near === undefined ? undefined : `Did you mean ${near}?`;
}

/** Braces inside a formula would run into those of TeX. */
function bracesInMaths(text: string): TemplateFault[] {
  return [...text.matchAll(/\$\$?([^$\n]+)\$/g)].flatMap((formula): TemplateFault[] => {
    const found = /\{\{[^{}\n]*\}\}/.exec(formula[1] ?? '');
    if (!found) return [];
    const at = formula.index + formula[0].indexOf(found[0]);
    const before = text.slice(0, at).split('\n');
    const name = /\{\{\s*(?:\w+\s+)?([\w.]+)/.exec(found[0])?.[1] ?? 'name';
    return [
      {
        rule: 'braces-in-maths',
        message: 'double braces inside $…$ would run into the braces of the formula',
        line: before.length,
        column: (before.at(-1)?.length ?? 0) + 1,
        length: found[0].length,
        hints: [`Write \\VAL{${name}} there.`],
      },
    ];
  });
}

/** Handlebars says the line, draws the place, and names what it expected in words of its own grammar. */
function syntaxFault({ message }: Error, text: string): TemplateFault {
  const line = Number(/line (\d+)/.exec(message)?.[1] ?? 1);
  const column = Math.max(1, (text.split('\n')[line - 1] ?? '').search(/\{\{/) + 1);
  return {
    rule: 'braces',
    message: 'the braces here cannot be read',
    line,
    column,
    length: 2,
    hints: ['Each {{ has its }}, and each {{#if …}} its {{/if}}.'],
  };
}
