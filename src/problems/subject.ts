import type { FullWork } from '../calculations/work.js';
import { Fault } from './fault.js';
import type { Row, Run } from './run.js';
import { BARE, type Workings } from './workings.js';

/** What a name stands for: its value, unit and symbol, and the working that found it. */
export interface Subject {
  readonly name: string;
  readonly value: unknown;
  readonly unit: string;
  readonly symbol: string;
  readonly title: string;
  readonly from: Source;
}

/** Where a value comes from: a calculation's found value, a lesson's own working, or a draw. */
export type Source =
  | { readonly kind: 'found'; readonly full: FullWork; readonly key: string }
  | { readonly kind: 'run'; readonly run: Exclude<Run, { kind: 'calculation' }> | Row }
  | { readonly kind: 'drawn' };

/**
 * What a name stands for among the workings done.
 *
 * @throws {Fault} when there is no such value
 */
export function subjectOf(name: string, workings: Workings): Subject {
  const value = workings.names.get(name);
  const [head = '', key] = name.split('.');
  const named = workings.runs.get(head);
  if (named && named.kind !== 'calculation') {
    const { unit, symbol, title } =
      named.kind === 'formula' || named.kind === 'series'
        ? named.declared
        : { unit: named.kind === 'among' ? unitTried(named) : '', symbol: undefined, title: undefined };
    const row = named.kind === 'series' && key !== undefined ? named.rows[Number(key)] : undefined;
    return {
      name,
      value,
      unit,
      symbol: symbol ?? '',
      title: title ?? head,
      from: { kind: 'run', run: row ?? named },
    };
  }
  if (named && key === undefined)
    throw new Fault(`${name} is a whole working; name one of its values`, [], name, [
      `It has ${Object.keys(named.full.found)
        .map((found) => `${name}.${found}`)
        .join(', ')}.`,
    ]);
  const bare = workings.runs.get(BARE);
  const [run, wanted] = named ? [named, key ?? ''] : [bare, head];
  if (run?.kind === 'calculation') {
    const { calculation } = run.full;
    const found = calculation.found[wanted];
    if (found) {
      const { unit, symbol = '', name: title } = found;
      return { name, value, unit, symbol, title, from: { kind: 'found', full: run.full, key: wanted } };
    }
  }
  const given = givenNamed(named ? wanted : head, workings);
  return {
    name,
    value,
    unit: given?.unit ?? (workings.lengths.has(head) ? 'mm' : ''),
    symbol: given?.symbol ?? '',
    title: given?.name ?? head,
    from: { kind: 'drawn' },
  };
}

function unitTried(run: Extract<Run, { kind: 'among' }>): string {
  const first = run.tried[0];
  const entry = Object.entries(first?.full.values ?? {}).find(([, value]) => value === first?.tried);
  return entry ? (first?.full.calculation.given[entry[0]]?.unit ?? '') : '';
}

/** A drawn value is described by the first calculation that is given it. */
function givenNamed(key: string, { runs }: Workings) {
  for (const run of runs.values()) {
    const full =
      run.kind === 'calculation' ? run.full : run.kind === 'among' ? run.tried[0]?.full : undefined;
    const quantity = full?.calculation.given[key];
    if (quantity) return quantity;
  }
  return undefined;
}

/** The two words of a decision, that for yes first. */
export function wordsOf({ from }: Subject): readonly [string, string] | undefined {
  return from.kind === 'run' && from.run.kind === 'decision' ? from.run.declared.words : undefined;
}
