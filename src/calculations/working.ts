import { evaluateFormula, NoValueError, symbolsOf } from '../formula/formula.js';
import { formatNumber, type UnitSystem } from '../units/format.js';
import { MM_PER_INCH } from '../units/length.js';
import type { Calculation, Step } from './calculation.js';

/** A line of working as data: a sentence, or a formula with its numbers and its result. */
export type WorkingStep = Sentence | FormulaStep;

export interface Sentence {
  readonly say: string;
}

/** A formula, the numbers that go in, and what comes out, as the reader is shown them. */
export interface FormulaStep {
  /** `d_a = m*(z + 2.76)` */
  readonly formula: string;
  /** The number shown for each symbol of the right-hand side, without units: `{ m: '0.8', z: '60' }`. */
  readonly numbers: Readonly<Record<string, string>>;
  /** The result with its unit: `50.208 mm`. */
  readonly result: string;
}

/** Numbers by symbol, and each symbol's unit. */
export interface Symbols {
  readonly values: Readonly<Record<string, number>>;
  readonly units: Readonly<Record<string, string>>;
}

/** The module and circular pitch stay in millimetres in an inch workshop too. */
const ALWAYS_MM = new Set(['m', 'p']);

/** The units in which a quantity of this symbol is told on sheets of a system. */
export function systemOf(symbol: string, system: UnitSystem): UnitSystem {
  return ALWAYS_MM.has(symbol) ? 'mm' : system;
}

const THIN = '\u202F';

const knownUnits = new WeakMap<Calculation, Readonly<Record<string, string>>>();

/** The unit of every symbol of a calculation. */
export function unitsOf(calculation: Calculation): Readonly<Record<string, string>> {
  const known = knownUnits.get(calculation);
  if (known) return known;
  const units: Record<string, string> = {};
  for (const { symbol, unit } of [...Object.values(calculation.given), ...Object.values(calculation.found)])
    if (symbol) units[symbol] = unit;
  knownUnits.set(calculation, units);
  return units;
}

/**
 * A step as the reader is shown it. In inches where the formula holds in inches as it stands; a formula with a
 * module or a constant of millimetres is worked in millimetres, and its result then turned into inches.
 */
export function showStep(step: Step, symbols: Symbols, system: UnitSystem): WorkingStep {
  if (typeof step !== 'string') return step;
  const { values, units } = symbols;
  const result = evaluateFormula(step, values);
  const unit = units[leftSide(step)] ?? '';
  const needed = symbolsOf(step);
  const inInches = system === 'inch' && holdsInInches(step, symbols, result, unit);
  const shown = (symbol: string): string => {
    const value = values[symbol] ?? 0;
    if (units[symbol] === '°') return `${decimals(value, 4)}°`;
    return inInches && isLength(symbol, units) ? decimals(value / MM_PER_INCH, 5) : decimals(value, 4);
  };
  return {
    formula: step,
    numbers: Object.fromEntries(needed.map((symbol) => [symbol, shown(symbol)])),
    result: inInches
      ? withUnit(result, unit, 'inch')
      : inWords(result, unit, systemOf(leftSide(step), system)),
  };
}

/** The steps that lead to a symbol, in order: its own formula, and those of what that needs. */
export function stepsTo(symbol: string, steps: readonly Step[]): Step[] {
  const wanted = new Set([symbol]);
  const kept: Step[] = [];
  for (const step of [...steps].reverse()) {
    if (typeof step !== 'string' || !wanted.has(leftSide(step))) continue;
    kept.unshift(step);
    for (const needed of symbolsOf(step)) wanted.add(needed);
  }
  return kept;
}

/** `d_a` of `d_a = m*z`; empty when a formula has no left-hand side. */
export function leftSide(formula: string): string {
  const at = formula.indexOf('=');
  return at < 0 ? '' : formula.slice(0, at).trim();
}

/** A number with as many decimals as it needs, up to a most: `0.8`, `50.208`. */
export function decimals(value: number, most: number): string {
  const text = formatNumber(value, most);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function inWords(value: number, unit: string, system: UnitSystem): string {
  const own = withUnit(value, unit, 'mm');
  return system === 'inch' && unit === 'mm' ? `${own} = ${withUnit(value, unit, 'inch')}` : own;
}

/** A number with its unit, with figures enough to follow the working: `50.208 mm`, `1.97669 in`, `6.4286°`. */
export function withUnit(value: number, unit: string, system: UnitSystem): string {
  if (unit === '°' || unit === '″') return `${decimals(value, 4)}${unit}`;
  if (unit === 'mm' && system === 'inch') return `${decimals(value / MM_PER_INCH, 5)}${THIN}in`;
  return unit === '' ? decimals(value, 4) : `${decimals(value, 4)}${THIN}${unit}`;
}

const isLength = (symbol: string, units: Readonly<Record<string, string>>) =>
  units[symbol] === 'mm' && !ALWAYS_MM.has(symbol);

/** Scaling every length down by 25.4 must scale a length found by as much, and leave any other result alone. */
function holdsInInches(step: string, { values, units }: Symbols, result: number, unit: string): boolean {
  const lengths = symbolsOf(step).filter((symbol) => isLength(symbol, units));
  if (lengths.length === 0 || ALWAYS_MM.has(leftSide(step))) return false;
  const scaled = { ...values };
  for (const symbol of lengths) scaled[symbol] = (values[symbol] ?? 0) / MM_PER_INCH;
  const expected = unit === 'mm' ? result / MM_PER_INCH : result;
  try {
    return Math.abs(evaluateFormula(step, scaled) - expected) <= 1e-9 * Math.max(1, Math.abs(expected));
  } catch (error) {
    if (error instanceof NoValueError) return false; // as a root of less than nothing
    throw error;
  }
}
