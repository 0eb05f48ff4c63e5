import type { Calculation } from '../calculations/calculation.js';
import { findCalculation } from '../calculations/catalogue.js';
import { type FullWork, workInFull } from '../calculations/work.js';
import { unitsOf } from '../calculations/working.js';
import { CommandError } from '../diagnostics/errors.js';
import { NoValueError } from '../formula/formula.js';
import { givensFromKit, kitPartOf } from '../kit/givens.js';
import type { Kit } from '../kit/schema.js';
import { Fault, placed } from './fault.js';
import { Names } from './names.js';
import { holds } from './relation.js';
import type { WorkingDeclaration } from './schema.js';

/** One working done. */
export type Run =
  | { readonly kind: 'calculation'; readonly full: FullWork }
  | { readonly kind: 'formula'; readonly declared: FormulaWorking; readonly value: number }
  | { readonly kind: 'decision'; readonly declared: Decision; readonly value: boolean }
  | {
      readonly kind: 'among';
      readonly where: readonly string[];
      readonly tried: readonly Trial[];
      readonly value: readonly unknown[];
    };

export type FormulaWorking = Extract<WorkingDeclaration, { formula: string }>;
export type Decision = Extract<WorkingDeclaration, { decide: readonly string[] }>;

/** One of several values tried. */
export interface Trial {
  readonly tried: unknown;
  readonly serves: boolean;
  readonly full: FullWork;
  /** What the relation that decided could name. */
  readonly names: Names;
}

/** All workings of a problem or lesson done: what may be named now, and each working. */
export interface Workings {
  readonly names: Names;
  readonly units: Readonly<Record<string, string>>;
  readonly runs: ReadonlyMap<string, Run>;
  /** Names of drawn values that were written with a unit of length. */
  readonly lengths: ReadonlySet<string>;
}

const NAME = /^[A-Za-z_]\w*(?:\.\w+)*$/;

export interface WorkingsOptions {
  /** Names of values that were written as lengths. */
  readonly lengths?: ReadonlySet<string>;
  /** Leaves out a working that has no value this time, and those that follow from it. */
  readonly absentMay?: boolean;
  /** Told what may be named after each working; it may throw to end them. */
  readonly after?: (names: Names) => void;
}

/** The name of a problem's one calculation, whose values are named bare. */
export const BARE = 'it';

/**
 * Works the declared workings in their order; each may name what stands before it.
 *
 * @param values drawn or of the example
 * @throws {Fault} a declaration that cannot be worked; {NoValueError} one that has no value with these numbers,
 *   unless that is allowed; {InputError} values that a calculation refuses;
 *   {DisagreementError} two routes that differ
 */
export function runWorkings(
  declared: Readonly<Record<string, WorkingDeclaration>>,
  values: Readonly<Record<string, unknown>>,
  kit: Kit,
  { lengths = new Set(), absentMay = false, after }: WorkingsOptions = {},
): Workings {
  const named: Record<string, unknown> = { ...values };
  const symbols: Record<string, number> = {};
  const units: Record<string, string> = {};
  const clashing = new Set<string>();
  const runs = new Map<string, Run>();
  const absent = new Set<string>();
  const seen = () => new Names(named, symbols, absent);
  const symbol = (name: string, value: number, unit: string): void => {
    if (symbols[name] !== undefined && symbols[name] !== value) clashing.add(name);
    symbols[name] = value;
    units[name] = unit;
    // A symbol that means two things here is none.
    if (clashing.has(name)) delete symbols[name];
  };
  for (const [name, one] of Object.entries(declared)) {
    let run: Run;
    try {
      run = placed(name === BARE ? [] : ['works', name], () => runOne(one, seen(), kit, name === BARE));
    } catch (error) {
      if (!absentMay || !(error instanceof NoValueError)) throw error;
      absent.add(name);
      continue;
    }
    runs.set(name, run);
    if (run.kind === 'calculation') {
      const all = { ...run.full.values, ...run.full.found };
      if (name === BARE) Object.assign(named, { ...all, ...values });
      else named[name] = all;
      const own = unitsOf(run.full.calculation);
      for (const [key, value] of Object.entries(run.full.symbols)) symbol(key, value, own[key] ?? '');
      const [move] = (run.full.found.settings ?? []) as readonly { holes: number; circle: number }[];
      if (move) {
        symbol('k', move.holes, '');
        symbol('H', move.circle, '');
      }
    } else {
      named[name] = run.value;
      if (run.kind === 'formula' && run.declared.symbol)
        symbol(run.declared.symbol, run.value, run.declared.unit);
      if (run.kind === 'formula' || run.kind === 'decision')
        placed(['works', name, 'check'], () => demandCheck(name, run, seen()));
    }
    after?.(seen());
  }
  return { names: seen(), units, runs, lengths };
}

function runOne(one: WorkingDeclaration, names: Names, kit: Kit, bare: boolean): Run {
  if ('formula' in one && typeof one.formula === 'string') {
    const declared = one as FormulaWorking;
    return { kind: 'formula', declared, value: placed(['formula'], () => names.evaluate(declared.formula)) };
  }
  if ('decide' in one) {
    const declared = one as Decision;
    return { kind: 'decision', declared, value: placed(['decide'], () => holds(declared.decide, names)) };
  }
  const { calculation: name, ...rest } = one as { calculation: string } & Record<string, unknown>;
  const calculation = calculationCalled(name);
  if (!('among' in one))
    return {
      kind: 'calculation',
      full: placed(bare ? ['with'] : [], () => workFrom(calculation, rest, names, kit)),
    };

  const { among, where, ...fixed } = rest as { among: Record<string, unknown[]>; where: string[] };
  const [key, ...others] = Object.keys(among);
  if (key === undefined || others.length > 0)
    throw new Fault('expected one value to try several of', ['among']);
  const tried = (among[key] ?? []).map((value): Trial => {
    const full = workFrom(calculation, { ...fixed, [key]: value }, names, kit);
    const seen = new Names(
      { ...names.values, ...full.values, ...full.found },
      { ...names.symbols, ...full.symbols },
    );
    const serves = placed(['where'], () => holds(where, seen));
    return { tried: full.values[key], full, serves, names: seen };
  });
  return { kind: 'among', where, tried, value: tried.filter((one) => one.serves).map((one) => one.tried) };
}

function calculationCalled(name: string): Calculation {
  try {
    return findCalculation(name);
  } catch (error) {
    if (error instanceof CommandError) throw new Fault(error.message, ['calculation'], name, error.hints);
    throw error;
  }
}

/** What is given comes from the declaration, else from a value of the same name, else from the kit. */
function workFrom(
  calculation: Calculation,
  declared: Readonly<Record<string, unknown>>,
  names: Names,
  kit: Kit,
): FullWork {
  const keys = Object.keys(calculation.given);
  const own: Record<string, unknown> = {};
  for (const key of keys) if (names.values[key] !== undefined) own[key] = names.values[key];
  for (const [key, raw] of Object.entries(declared)) {
    const quantity = calculation.given[key];
    const literal = quantity?.read(raw) !== undefined;
    if (!quantity)
      throw new Fault(`${calculation.name} is not given ${key}`, [key], '', [
        `It is given ${Object.keys(calculation.given).join(', ')}.`,
      ]);
    own[key] = literal ? raw : placed([key], () => named(raw, names, quantity));
  }
  const given = givensFromKit(kit, calculation.name, keys, own);
  for (const [key, { name, fallback, optional }] of Object.entries(calculation.given)) {
    if (given[key] !== undefined || fallback !== undefined || optional) continue;
    const part = kitPartOf(calculation.name, key);
    throw new Fault(`${calculation.name} is not given ${key}, ${name}`, [], '', [
      part ? `Put ${key} among the values, or write ${part}: in the kit.` : `Put ${key} among the values.`,
    ]);
  }
  return workInFull(calculation.name, given);
}

/** What is not a literal is a name. */
function named(raw: unknown, names: Names, { accepts }: { readonly accepts: string }): unknown {
  const give = `Give ${accepts}, or a name.`;
  if (typeof raw !== 'string' || !NAME.test(raw))
    throw new Fault(`${JSON.stringify(raw)} is neither a value nor a name`, [], '', [give]);
  try {
    return names.get(raw);
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    throw new Fault(error.message, [], raw, [...error.hints, give]);
  }
}

function demandCheck(name: string, run: Extract<Run, { kind: 'formula' | 'decision' }>, names: Names): void {
  const agrees = holds(run.declared.check, names);
  if (run.kind === 'formula' ? !agrees : agrees !== run.value)
    throw new Fault(`the check of ${name} does not hold: ${run.declared.check.join(' and ')}`, [], '', [
      'Look at the formula and at its check: one of them is wrong.',
    ]);
}
