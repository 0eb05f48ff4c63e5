import type { Calculation } from '../calculations/calculation.js';
import { findCalculation } from '../calculations/catalogue.js';
import type { FullWork } from '../calculations/work.js';
import { unitsOf } from '../calculations/working.js';
import { CommandError, InputError } from '../diagnostics/errors.js';
import { NoValueError } from '../formula/formula.js';
import { givensFromKit, kitPartOf } from '../kit/givens.js';
import type { Kit } from '../kit/schema.js';
import { Fault, placed } from './fault.js';
import { Names } from './names.js';
import type { Patience } from './patience.js';
import { holds } from './relation.js';
import { replaced } from './replaced.js';
import {
  type Cases,
  type Decision,
  type FormulaWorking,
  type Ranking,
  type Run,
  runCases,
  runRanking,
  runSeries,
  type SeriesWorking,
  type Trial,
} from './run.js';
import type { WorkingDeclaration } from './schema.js';
import { workedOnce } from './worked-once.js';

/** All workings of a problem or lesson done: what may be named now, and each working. */
export interface Workings {
  readonly names: Names;
  readonly units: Readonly<Record<string, string>>;
  readonly runs: ReadonlyMap<string, Run>;
  /** Names of drawn values that were written with a unit of length. */
  readonly lengths: ReadonlySet<string>;
  /**
   * The same with other values in place of some, as of one who slipped: what stands after them follows from them,
   * and is not asked to put back what it no longer comes from.
   */
  again(instead: Instead): Workings;
}

/** Values by name, `teeth`, `wheel.depthOfCut`, `settings.0.holes`, in place of those drawn or found. */
export type Instead = ReadonlyMap<string, unknown>;

const NAME = /^[A-Za-z_]\w*(?:\.\w+)*$/;

export interface WorkingsOptions {
  /** Names of values that were written as lengths. */
  readonly lengths?: ReadonlySet<string>;
  /** Leaves out a working that has no value this time, and those that follow from it. */
  readonly absentMay?: boolean;
  /** Told what may be named after each working; it may throw to end them. */
  readonly after?: (names: Names) => void;
  readonly instead?: Instead;
  /** Asked after each working, here and when it is worked again. */
  readonly patience?: Patience | undefined;
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
  { lengths = new Set(), absentMay = false, after, instead = new Map(), patience }: WorkingsOptions = {},
): Workings {
  const named: Record<string, unknown> = { ...values };
  /** Puts in what stands instead of a value of one name, once there is one. */
  const put = (name: string): void => {
    for (const [path, value] of instead) {
      const [head = '', ...rest] = path.split('.');
      if (head === name && Object.hasOwn(named, head)) named[head] = replaced(named[head], rest, value);
    }
  };
  for (const name of Object.keys(values)) put(name);
  const symbols: Record<string, number> = {};
  const units: Record<string, string> = {};
  const clashing = new Set<string>();
  const runs = new Map<string, Run>();
  const absent = new Set<string>();
  /** What may be named so far. */
  const names = new Names(named, symbols, absent);
  const symbol = (name: string, value: number, unit: string): void => {
    units[name] = unit;
    if (clashing.has(name)) return;
    if (symbols[name] === undefined || symbols[name] === value) {
      symbols[name] = value;
      return;
    }
    // A symbol that means two things here is none.
    clashing.add(name);
    delete symbols[name];
  };
  for (const [name, one] of Object.entries(declared)) {
    patience?.demand();
    let run: Run;
    try {
      run = placed(name === BARE ? [] : ['works', name], () => runOne(one, name, names, kit));
    } catch (error) {
      // Nothing need follow from a value that is put in place of a right one.
      const may = instead.size > 0 ? [NoValueError, InputError] : absentMay ? [NoValueError] : [];
      if (!may.some((kind) => error instanceof kind)) throw error;
      absent.add(name);
      continue;
    }
    runs.set(name, run);
    if (run.kind === 'calculation') {
      const all = { ...run.full.values, ...run.full.found };
      if (name === BARE) {
        for (const [key, value] of Object.entries(all)) {
          if (!Object.hasOwn(values, key)) named[key] = value;
          put(key);
        }
      } else {
        named[name] = all;
        put(name);
      }
      const now = (name === BARE ? named : named[name]) as Readonly<Record<string, unknown>>;
      const own = unitsOf(run.full.calculation);
      const numbers =
        instead.size > 0
          ? { ...run.full.symbols, ...symbolsIn(run.full.calculation, now) }
          : run.full.symbols;
      for (const [key, value] of Object.entries(numbers)) symbol(key, value, own[key] ?? '');
      const [move] = (now.settings ?? []) as readonly { holes: number; circle: number }[];
      if (move) {
        symbol('k', move.holes, '');
        symbol('H', move.circle, '');
      }
    } else {
      named[name] = run.value;
      put(name);
      if (run.kind === 'formula' && run.declared.symbol)
        symbol(run.declared.symbol, Number(named[name]), run.declared.unit);
      if (instead.size === 0) placed(['works', name], () => demandCheck(name, run, names));
    }
    after?.(names);
  }
  return {
    names,
    units,
    runs,
    lengths,
    again: (others) => runWorkings(declared, values, kit, { lengths, instead: others }),
  };
}

/** The numbers of a calculation by symbol, as they are named now. */
function symbolsIn(
  { given, found }: Calculation,
  now: Readonly<Record<string, unknown>>,
): Record<string, number> {
  const numbers: Record<string, number> = {};
  for (const [key, { symbol }] of [...Object.entries(given), ...Object.entries(found)])
    if (symbol && typeof now[key] === 'number') numbers[symbol] = now[key];
  return numbers;
}

function runOne(one: WorkingDeclaration, own: string, names: Names, kit: Kit): Run {
  if ('each' in one) return runSeries(one as SeriesWorking, own, names);
  if ('cases' in one) return runCases(one as Cases, names);
  if ('rank' in one) return runRanking(one as Ranking, names);
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
      full: placed(own === BARE ? ['with'] : [], () => workFrom(calculation, rest, names, kit)),
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
  return workedOnce(calculation.name, given);
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

/** The second route's word on a lesson's own working. @throws {Fault} when it does not hold */
function demandCheck(name: string, run: Run, names: Names): void {
  const disagrees = (relations: readonly string[], ...path: string[]): Fault =>
    new Fault(`the check of ${name} does not hold: ${relations.join(' and ')}`, [...path, 'check'], '', [
      'Look at the formula and at its check: one of them is wrong.',
    ]);
  const checked = (relations: readonly string[], among = names): boolean =>
    placed(['check'], () => holds(relations, among));
  switch (run.kind) {
    case 'formula':
      if (!checked(run.declared.check)) throw disagrees(run.declared.check);
      return;
    case 'series':
      if (!run.rows.every((row) => checked(row.declared.check, row.names)))
        throw disagrees(run.declared.check);
      return;
    case 'decision':
      if (checked(run.declared.check) !== run.value) throw disagrees(run.declared.check);
      return;
    case 'cases':
      for (const [words, { check }] of Object.entries(run.declared.cases))
        if (placed(['cases', words, 'check'], () => holds(check, names)) !== (words === run.value))
          throw disagrees(check, 'cases', words);
  }
}
