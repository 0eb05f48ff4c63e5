import {
  absDependencies,
  acosDependencies,
  addDependencies,
  asinDependencies,
  atan2Dependencies,
  ceilDependencies,
  cosDependencies,
  create,
  divideDependencies,
  evaluateDependencies,
  floorDependencies,
  gcdDependencies,
  type MathNode,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  roundDependencies,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
} from 'mathjs/number';

/** Names a formula may call, and nothing else: no import, no assignment, no units, no nested evaluation. */
export const FUNCTIONS: ReadonlySet<string> = new Set([
  'sqrt',
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan2',
  'abs',
  'floor',
  'ceil',
  'round',
  'min',
  'max',
  'gcd',
  'sind',
  'cosd',
  'tand',
  'asind',
  'acosd',
  'atand',
]);
const NODES = new Set(['OperatorNode', 'SymbolNode', 'ConstantNode', 'ParenthesisNode', 'FunctionNode']);
const OPERATORS = new Set(['+', '-', '*', '/', '^']);
const LONGEST = 400;

const maths = create(
  {
    ...absDependencies,
    ...acosDependencies,
    ...addDependencies,
    ...asinDependencies,
    ...atan2Dependencies,
    ...ceilDependencies,
    ...cosDependencies,
    ...divideDependencies,
    ...evaluateDependencies,
    ...floorDependencies,
    ...gcdDependencies,
    ...maxDependencies,
    ...minDependencies,
    ...multiplyDependencies,
    ...parseDependencies,
    ...piDependencies,
    ...powDependencies,
    ...roundDependencies,
    ...sinDependencies,
    ...sqrtDependencies,
    ...subtractDependencies,
    ...tanDependencies,
    ...unaryMinusDependencies,
    ...unaryPlusDependencies,
  },
  {},
);

const DEGREE = Math.PI / 180;

/** Trigonometry in degrees, as the shop works it; shown to the reader without the last letter. */
maths.import({
  sind: (angle: number) => Math.sin(angle * DEGREE),
  cosd: (angle: number) => Math.cos(angle * DEGREE),
  tand: (angle: number) => Math.tan(angle * DEGREE),
  asind: (ratio: number) => Math.asin(ratio) / DEGREE,
  acosd: (ratio: number) => Math.acos(ratio) / DEGREE,
  atand: (ratio: number) => Math.atan(ratio) / DEGREE,
});

/** A formula's right-hand side, read and found to be arithmetic. */
export interface ParsedFormula {
  readonly tree: MathNode;
  readonly evaluate: (scope: Scope) => unknown;
}

const parsed = new Map<string, ParsedFormula>();

/** Numbers by symbol. */
export type Scope = Readonly<Record<string, number>>;

/** A formula that is not plain arithmetic; the message says which part. */
export class FormulaError extends Error {
  override readonly name = 'FormulaError';
}

/** A formula that is arithmetic, but comes to no finite number with these values. */
export class NoValueError extends FormulaError {}

/**
 * Value of a formula's right-hand side, such as `m*(z + n)/2`; a name may stand before it, `a = …`, and is ignored.
 * `sin(A)` takes radians, `sind(A)` degrees. `pi` is known.
 *
 * @throws {FormulaError} for anything but arithmetic or an unknown symbol; {NoValueError} for no finite number
 */
export function evaluateFormula(text: string, scope: Scope): number {
  const { evaluate } = parseFormula(text);
  let value: unknown;
  try {
    value = evaluate({ ...scope });
  } catch (error) {
    throw new FormulaError((error as Error).message.replace(/^./, (first) => first.toLowerCase()));
  }
  if (typeof value !== 'number' || !Number.isFinite(value))
    throw new NoValueError(`"${text}" has no finite value`);
  return value;
}

/** Symbols that a formula's right-hand side needs, `pi` and function names apart. */
export function symbolsOf(text: string): string[] {
  const names = new Set<string>();
  parseFormula(text).tree.traverse((node, path) => {
    const name = (node as { name?: string }).name;
    if (node.type === 'SymbolNode' && path !== 'fn' && name !== undefined && name !== 'pi') names.add(name);
  });
  return [...names];
}

/** A formula as it is shown in plain text: functions of degrees by their usual names. */
export function plainFormula(text: string): string {
  return text.replace(/\b(a?(?:sin|cos|tan))d\(/g, '$1(');
}

/** The right-hand side with each symbol replaced by its number as the reader is shown it, one below 0 in brackets. */
export function withNumbers(text: string, shown: Readonly<Record<string, string>>): string {
  return plainFormula(rightSide(text)).replace(/[A-Za-z_][A-Za-z_0-9]*/g, (name) => {
    const number = Object.hasOwn(shown, name) ? (shown[name] ?? name) : name;
    return /^[-−]/.test(number) ? `(${number})` : number;
  });
}

/** A name with its equals sign: it is shown, and not worked. */
const LEFT = /^\s*[A-Za-z][\w.]*\s*=(?!=)/;
const EQUALS = /(?<![<>!=])=(?!=)/;

/** A formula without the name that stands before it, `m*z` of `d = m*z`. */
export function rightSide(text: string): string {
  return text.replace(LEFT, '').trim();
}

/**
 * Reads a formula's right-hand side; each text is read once.
 *
 * @throws {FormulaError} for anything but arithmetic
 */
export function parseFormula(text: string): ParsedFormula {
  const known = parsed.get(text);
  if (known) return known;
  if (text.length > LONGEST) throw new FormulaError(`a formula may have ${LONGEST} characters at most`);
  if (rightSide(text) === '') throw new FormulaError('a formula is missing');
  if (EQUALS.test(rightSide(text)))
    throw new FormulaError(`"${text}" cannot be read: only a name may stand before =`);
  let tree: MathNode;
  try {
    tree = maths.parse(rightSide(text));
  } catch (error) {
    throw new FormulaError(`"${text}" cannot be read: ${(error as Error).message}`);
  }
  tree.traverse(refuseAllButArithmetic);
  const code = tree.compile();
  const formula: ParsedFormula = { tree, evaluate: (scope) => code.evaluate(scope) };
  parsed.set(text, formula);
  return formula;
}

function refuseAllButArithmetic(node: MathNode, path: string): void {
  const { type, op, name, value } = node as { type: string; op?: string; name?: string; value?: unknown };
  if (!NODES.has(type))
    throw new FormulaError(`${type.replace('Node', '').toLowerCase()} is not allowed in a formula`);
  if (type === 'ConstantNode' && !Number.isFinite(value))
    throw new FormulaError(`${value} is not allowed in a formula`);
  if (type === 'OperatorNode' && !OPERATORS.has(op ?? ''))
    throw new FormulaError(`${op} is not allowed in a formula`);
  if (type === 'FunctionNode' && !FUNCTIONS.has(name ?? ''))
    throw new FormulaError(`${name}() is not a function of formulas`);
  if (type === 'SymbolNode' && path !== 'fn' && FUNCTIONS.has(name ?? ''))
    throw new FormulaError(`${name} needs a value in brackets`);
}
