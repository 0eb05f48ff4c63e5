import type { MathNode } from 'mathjs/number';
import { parseFormula } from './formula.js';

/** Text of a number as the reader is shown it, by symbol. */
export type ShownNumbers = Readonly<Record<string, string>>;

/** The two sides of a formula, each as TeX; no left side for a bare expression. */
export interface TexSides {
  readonly left: string | undefined;
  readonly right: string;
}

/** The parts of a mathjs node that are read here. */
interface Node {
  readonly type: string;
  readonly op?: string;
  readonly name?: string;
  readonly value?: unknown;
  readonly args?: readonly Node[];
  readonly content?: Node;
  readonly fn?: string | { readonly name: string };
}

const NAMED: Readonly<Record<string, string>> = {
  sin: '\\sin',
  cos: '\\cos',
  tan: '\\tan',
  asin: '\\arcsin',
  acos: '\\arccos',
  sind: '\\sin',
  cosd: '\\cos',
  tand: '\\tan',
  asind: '\\arcsin',
  acosd: '\\arccos',
  atand: '\\arctan',
  min: '\\min',
  max: '\\max',
};
const FENCES: Readonly<Record<string, readonly [string, string]>> = {
  abs: ['|', '|'],
  floor: ['\\lfloor', '\\rfloor'],
  ceil: ['\\lceil', '\\rceil'],
};

/**
 * A formula as TeX: fractions, roots, × between numbers only.
 *
 * @param text `d_a = m*(z + 2.76)`, or the right-hand side alone
 * @param numbers what to put in for each symbol; a symbol not there stays
 * @throws {FormulaError} for anything but arithmetic
 */
export function formulaTex(text: string, numbers: ShownNumbers = {}): string {
  const { left, right } = texSides(text, numbers);
  return left === undefined ? right : `${left} = ${right}`;
}

/** The same, side by side, so that a page can align the equals signs. */
export function texSides(text: string, numbers: ShownNumbers = {}): TexSides {
  const at = text.indexOf('=');
  const left = at < 0 ? undefined : symbolTex(text.slice(0, at).trim());
  return { left, right: texOf(parseFormula(text).tree as MathNode as Node, numbers) };
}

/** A symbol as TeX: `d_a` with a subscript, `depthOfCut` upright and in words, `pi` as π. */
export function symbolTex(symbol: string): string {
  if (symbol === 'pi') return '\\pi';
  const [stem = '', ...rest] = symbol.replace(/^([A-Za-z])(\d+)$/, '$1_$2').split('_');
  const low = rest.join('_');
  return `${nameTex(stem)}${low && `_{${nameTex(low)}}`}`;
}

function nameTex(name: string): string {
  if (/^(?:[A-Za-z]|\d+)$/.test(name)) return name;
  const words = name.replace(/(?<=[a-z\d])(?=[A-Z])/g, ' ').replaceAll('_', ' ');
  return `\\text{${/^[A-Z]+$/.test(name) ? words : words.toLowerCase()}}`;
}

/** A number as the reader is shown it; what is no plain number, such as an angle, is set as text. */
export function numberTex(shown: string): string {
  if (!/^[+−-]?\d[\d .\u2009\u202F]*$/.test(shown)) return `\\text{${shown.replace(/[\u2009\u202F]/g, ' ')}}`;
  return shown.replace('−', '-').replace(/[ \u2009\u202F]/g, '\\,');
}

/** @param within a fraction, where another would be too small to read */
function texOf(node: Node, numbers: ShownNumbers, within = false): string {
  const inside = (one: Node | undefined): string => (one ? texOf(one, numbers, within) : '');
  const [first, second] = node.args ?? [];
  switch (node.type) {
    case 'ConstantNode':
      return numberTex(plain(node.value as number));
    case 'SymbolNode': {
      const name = node.name ?? '';
      const shown = Object.hasOwn(numbers, name) ? numbers[name] : undefined;
      return shown === undefined ? symbolTex(name) : numberTex(shown);
    }
    case 'ParenthesisNode':
      return isSingle(bare(node), numbers) ? inside(bare(node)) : fenced(inside(bare(node)), '(', ')');
    case 'FunctionNode':
      return callTex(node, (arg) => (within && onLine(arg, numbers)) || inside(arg));
    default:
      return second
        ? binaryTex(node.op ?? '', first as Node, second, numbers, within)
        : signed(node.op, first, numbers);
  }
}

function callTex({ fn, args = [] }: Node, inside: (one: Node | undefined) => string): string {
  const name = typeof fn === 'string' ? fn : (fn?.name ?? '');
  const values = args.map((arg) => inside(bare(arg)));
  if (name === 'sqrt') return `\\sqrt{${values.join()}}`;
  const [open, close] = FENCES[name] ?? ['(', ')'];
  const word = FENCES[name] ? '' : (NAMED[name] ?? `\\operatorname{${name}}`);
  return `${word}${fenced(values.join(',\\,'), open, close)}`;
}

/** `3/12`, a fraction of two single things; nothing for any other. */
function onLine(node: Node | undefined, numbers: ShownNumbers): string {
  const [a, b] = node?.args ?? [];
  if (node?.op !== '/' || !a || !b || !isSingle(bare(a), numbers) || !isSingle(bare(b), numbers)) return '';
  return `${texOf(bare(a), numbers)}/${texOf(bare(b), numbers)}`;
}

function binaryTex(op: string, a: Node, b: Node, numbers: ShownNumbers, within: boolean): string {
  const tex = (node: Node): string => texOf(node, numbers, within || op === '/');
  if (op === '/') return `\\frac{${tex(bare(a))}}{${tex(bare(b))}}`;
  if (op === '^') return `${isNegative(a, numbers) ? fenced(tex(a), '(', ')') : tex(a)}^{${tex(bare(b))}}`;
  const right = isNegative(b, numbers) ? fenced(tex(b), '(', ')') : tex(b);
  if (op === '*')
    return `${tex(a)}${joint(tex(a), right, isNumeric(a, numbers) && isNumeric(b, numbers))}${right}`;
  return `${tex(a)} ${op} ${right}`;
}

/** What stands between two factors: nothing where they read well side by side; two words would read as one. */
function joint(left: string, right: string, bothNumbers: boolean): string {
  if (bothNumbers || /^(?:\d|\\text)/.test(right) || /\\text\{[^}]*\}$/.test(left)) return ' \\times ';
  return /\d$/.test(left) || /^\\left/.test(right) || /^\(/.test(right) ? ' ' : '\\,';
}

function signed(op: string | undefined, of: Node | undefined, numbers: ShownNumbers): string {
  const value = of ? texOf(of, numbers) : '';
  return `${op}${of && isNegative(of, numbers) ? fenced(value, '(', ')') : value}`;
}

/** Brackets, tall where there is something tall in them. */
function fenced(tex: string, open: string, close: string): string {
  const tall = /\\frac|\\sqrt|\^/.test(tex);
  return tall ? `\\left${open} ${tex} \\right${close}` : `${open}${open.length > 1 ? ' ' : ''}${tex}${close}`;
}

/** What is in the brackets; a fraction bar, a root or a function's own brackets need none beside them. */
function bare(node: Node): Node {
  return node.type === 'ParenthesisNode' && node.content ? bare(node.content) : node;
}

function isSingle(node: Node, numbers: ShownNumbers): boolean {
  return (node.type === 'SymbolNode' || node.type === 'ConstantNode') && !isNegative(node, numbers);
}

/** Would put its own minus beside another sign. */
function isNegative(node: Node, numbers: ShownNumbers): boolean {
  if (node.type === 'SymbolNode') return /^[−-]/.test(numbers[node.name ?? ''] ?? '');
  return node.type === 'OperatorNode' && node.args?.length === 1;
}

/** Has no letter left in it. */
function isNumeric(node: Node, numbers: ShownNumbers): boolean {
  if (node.type === 'SymbolNode') return Object.hasOwn(numbers, node.name ?? '');
  if (node.type === 'ParenthesisNode') return isNumeric(bare(node), numbers);
  return (node.args ?? []).every((arg) => isNumeric(arg, numbers));
}

/** A number without an exponent. */
function plain(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}
