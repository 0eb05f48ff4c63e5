import { DisagreementError } from '../diagnostics/errors.js';
import { evaluateFormula, plainFormula, symbolsOf, withNumbers } from '../formula/formula.js';
import { formulas } from '../handbook/formulas.js';
import type { Citation } from '../handbook/record.js';
import { sources } from '../handbook/sources.js';
import type { Calculation, Proof, Slip, Step } from './calculation.js';
import { findCalculation } from './catalogue.js';
import { readGiven } from './quantity.js';
import { leftSide, unitsOf } from './working.js';

type Values = Readonly<Record<string, unknown>>;
type AnyProof = Proof<Values, Values>;

/** One found value held against the handbook. */
export interface Check {
  readonly of: string;
  /** What was compared, where that is not the found value itself: `area enclosed, mm²`. */
  readonly measured?: string;
  /** What that is of the found value. */
  readonly ours?: unknown;
  readonly source: string;
  readonly value: unknown;
  /** Largest difference allowed, in the value's unit; 0 for exact things. */
  readonly within: number;
  readonly agrees: boolean;
}

/** A worked calculation: found values unrounded, in the units the catalogue states. */
export interface Worked {
  readonly calculation: string;
  readonly given: Readonly<Record<string, unknown>>;
  readonly found: Readonly<Record<string, unknown>>;
  readonly checks: readonly Check[];
  readonly working: readonly string[];
}

/**
 * Works one calculation of the catalogue by both routes.
 *
 * @param name such as `wheel.blank`
 * @param given numbers, lists, or strings as typed (`1/32in`, `15,16,17`)
 * @throws {CommandError} unknown calculation; {InputError} a value that is not accepted;
 *   {DisagreementError} the two routes differ
 */
export function work(name: string, given: Readonly<Record<string, unknown>>): Worked {
  const { calculation, values, found, checks, steps, symbols } = workInFull(name, given);
  return {
    calculation: name,
    given: values,
    found,
    checks,
    working: steps.map((step) => line(step, symbols, unitsOf(calculation))),
  };
}

/** A worked calculation with what the sheets need to set it out. */
export interface FullWork {
  readonly calculation: Calculation;
  /** What it was given, read. */
  readonly values: Values;
  readonly found: Values;
  readonly checks: readonly Check[];
  /** The working, before any number is put in. */
  readonly steps: readonly Step[];
  /** Numbers by symbol. */
  readonly symbols: Readonly<Record<string, number>>;
  readonly slips: Readonly<Record<string, Slip>>;
}

/**
 * The same as `work`, before the working is written out.
 *
 * @throws what `work` throws
 */
export function workInFull(name: string, given: Readonly<Record<string, unknown>>): FullWork {
  const calculation = findCalculation(name);
  const values = readGiven(calculation.given, given);
  calculation.refuse?.(values);
  const found = calculation.work(values);
  const symbols = symbolValues(calculation, values, found);
  const checks = calculation.proofs.map((proof) => check(proof, values, symbols, found));
  const wrong = checks.find((one) => !one.agrees);
  if (wrong)
    throw new DisagreementError(
      `${name}: ${wrong.of} is ${short(found[wrong.of])}, but ${wrong.source} gives ${short(wrong.value)}`,
    );
  const { working, slips = {} } = calculation;
  return {
    calculation,
    values,
    found,
    checks,
    symbols,
    steps: typeof working === 'function' ? working(values, found) : working,
    slips: typeof slips === 'function' ? slips(values, found) : slips,
  };
}

/** A value on one line, never a long one. */
function short(value: unknown): string {
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 200 ? `${text.slice(0, 199)}…` : text;
}

const symbolKeys = new WeakMap<Calculation, readonly (readonly [string, string])[]>();

/** Each key of a calculation that has a symbol, with it. */
function keysWithSymbols(calculation: Calculation): readonly (readonly [string, string])[] {
  let keys = symbolKeys.get(calculation);
  if (!keys) {
    const all = [...Object.entries(calculation.given), ...Object.entries(calculation.found)];
    keys = all.flatMap(([key, { symbol }]) => (symbol ? [[key, symbol] as const] : []));
    symbolKeys.set(calculation, keys);
  }
  return keys;
}

/** Numbers by symbol, of what is given and what is found. */
function symbolValues(calculation: Calculation, given: Values, found: Values): Record<string, number> {
  const scope: Record<string, number> = {};
  for (const [key, symbol] of keysWithSymbols(calculation)) {
    // A count may be given under the name that a list is found by.
    const value = [found[key], given[key]].find((one) => typeof one === 'number');
    if (value !== undefined) scope[symbol] = value as number;
  }
  return scope;
}

function check(
  proof: AnyProof,
  given: Values,
  scope: Readonly<Record<string, number>>,
  found: Values,
): Check {
  const { value, within, cited, measure } = handbookValue(proof, given, scope);
  const ours = measure ? measure.of(found[proof.of], given) : found[proof.of];
  return {
    of: proof.of,
    ...(measure ? { measured: measure.name, ours } : {}),
    source: `${sources[cited.work]}; ${cited.at}`,
    value,
    within,
    agrees: agrees(ours, value, within),
  };
}

function handbookValue(proof: AnyProof, given: Values, scope: Readonly<Record<string, number>>) {
  if ('formula' in proof) {
    const { formula, source } = formulas[proof.formula];
    const value = evaluateFormula(formula, scope);
    // The same sum in another order: only the last bits may differ.
    return { value, within: 1e-9 * Math.max(1, Math.abs(value)), cited: source as Citation };
  }
  const { value, within = 0, source, measure } = proof;
  return {
    value: value(given),
    within: typeof within === 'number' ? within : within(given),
    cited: typeof source === 'function' ? source(given) : source,
    measure,
  };
}

/** Numbers may differ by the allowance; lists and records are compared part by part; all else must be the same. */
function agrees(a: unknown, b: unknown, within: number): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= within || Object.is(a, b);
  if (!isParted(a) || !isParted(b)) return a === b;
  const keys = Object.keys(a);
  return (
    Array.isArray(a) === Array.isArray(b) &&
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && agrees(a[key], b[key], within))
  );
}

const isParted = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

function line(
  step: Step,
  scope: Readonly<Record<string, number>>,
  units: Readonly<Record<string, string>>,
): string {
  if (typeof step !== 'string') return step.say;
  const degree = (symbol: string) => (units[symbol] === '°' ? '°' : '');
  const shown = symbolsOf(step).map((symbol) => [symbol, figures(scope[symbol]) + degree(symbol)]);
  const right = plainFormula(step.slice(step.indexOf('=') + 1).trim());
  const result = figures(evaluateFormula(step, scope)) + degree(leftSide(step));
  // A formula of numbers alone, or of one symbol, would say the same twice.
  const sides = new Set([right, withNumbers(step, Object.fromEntries(shown)), result]);
  return [leftSide(step), ...sides].filter((side) => side !== '').join(' = ');
}

/** What binary arithmetic leaves of nought. */
const DUST = 1e-10;

/** Seven significant figures: more than any sheet prints, fewer than binary dust. */
function figures(value: number | undefined): string {
  if (value === undefined) return '?';
  return String(Math.abs(value) < DUST ? 0 : Number(value.toPrecision(7)));
}
