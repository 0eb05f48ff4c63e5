import type { FullWork } from '../calculations/work.js';
import { Fault, placed } from './fault.js';
import { Names } from './names.js';
import { holds } from './relation.js';
import type { WorkingDeclaration } from './schema.js';

/** One working done. */
export type Run =
  | { readonly kind: 'calculation'; readonly full: FullWork }
  | { readonly kind: 'formula'; readonly declared: FormulaWorking; readonly value: number }
  | SeriesRun
  | { readonly kind: 'decision'; readonly declared: Decision; readonly value: boolean }
  | { readonly kind: 'cases'; readonly declared: Cases; readonly value: string }
  | RankingRun
  | {
      readonly kind: 'among';
      readonly where: readonly string[];
      readonly tried: readonly Trial[];
      readonly value: readonly unknown[];
    };

export type SeriesWorking = Extract<WorkingDeclaration, { each: unknown }>;
export type FormulaWorking = Exclude<Extract<WorkingDeclaration, { formula: string }>, SeriesWorking>;
export type Decision = Extract<WorkingDeclaration, { decide: readonly string[] }>;
export type Cases = Extract<WorkingDeclaration, { cases: Readonly<Record<string, { when: unknown }>> }>;
export type Ranking = Extract<WorkingDeclaration, { rank: Readonly<Record<string, string>> }>;

/** One of several values tried. */
export interface Trial {
  readonly tried: unknown;
  readonly serves: boolean;
  readonly full: FullWork;
  /** What the relation that decided could name. */
  readonly names: Names;
}

/** A formula worked for each of several numbers. */
export interface SeriesRun {
  readonly kind: 'series';
  readonly declared: SeriesWorking;
  readonly rows: readonly Row[];
  readonly value: readonly number[];
}

/** One row of it. */
export interface Row {
  readonly kind: 'row';
  readonly declared: SeriesWorking;
  /** The number it is worked for, which stands at its head. */
  readonly head: number;
  readonly value: number;
  /** What its formula could name, itself and its head among them. */
  readonly names: Names;
}

/** Values in order. */
export interface RankingRun {
  readonly kind: 'ranking';
  readonly declared: Ranking;
  readonly ranked: readonly Ranked[];
  /** Their names. */
  readonly value: readonly string[];
}

export interface Ranked {
  readonly name: string;
  readonly label: string;
  readonly value: number;
}

/** The name over the heads of a series. */
export const headOf = ({ each }: SeriesWorking): string => Object.keys(each)[0] ?? '';

/** A working that is a formula for each of several numbers, under its own name. @throws {Fault}, {NoValueError} */
export function runSeries(declared: SeriesWorking, name: string, names: Names): SeriesRun {
  const head = headOf(declared);
  const rows = (declared.each[head]?.mm ?? []).map((one): Row => {
    if (typeof one !== 'number')
      throw new Fault(`${JSON.stringify(one)} is not a number`, ['each', head], String(one));
    const known = new Names({ ...names.values, [head]: one }, names.symbols, names.absent);
    const value = placed(['formula'], () => known.evaluate(declared.formula));
    const seen = new Names({ ...known.values, [name]: value }, names.symbols, names.absent);
    return { kind: 'row', declared, head: one, value, names: seen };
  });
  return { kind: 'series', declared, rows, value: rows.map(({ value }) => value) };
}

/** The case that holds. @throws {Fault} when none does, or two do */
export function runCases(declared: Cases, names: Names): Extract<Run, { kind: 'cases' }> {
  const holding = Object.entries(declared.cases).filter(([words, { when }]) =>
    placed(['cases', words, 'when'], () => holds(when, names)),
  );
  const [first, second] = holding;
  if (!first) throw new Fault('none of the cases holds with these values', ['cases']);
  if (second)
    throw new Fault(`two of the cases hold at once: ${first[0]}, and ${second[0]}`, ['cases'], second[0]);
  return { kind: 'cases', declared, value: first[0] };
}

/** Several values in order. @throws {Fault} for an unknown name */
export function runRanking(declared: Ranking, names: Names): RankingRun {
  const ranked = Object.entries(declared.rank).map(
    ([name, label]): Ranked => ({ name, label, value: placed(['rank', name], () => names.number(name)) }),
  );
  ranked.sort((a, b) => (declared.from === 'least' ? a.value - b.value : b.value - a.value));
  return { kind: 'ranking', declared, ranked, value: ranked.map(({ name }) => name) };
}
